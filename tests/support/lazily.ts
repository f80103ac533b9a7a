/** Parts are made on first use and kept. */
export function lazily<T extends object>(makers: { readonly [K in keyof T]: () => T[K] }): T {
  const parts = {} as T;
  for (const key of Object.keys(makers) as (keyof T)[])
    Object.defineProperty(parts, key, {
      configurable: true,
      get: () => {
        const value = makers[key]();
        Object.defineProperty(parts, key, { value });
        return value;
      },
    });
  return parts;
}
