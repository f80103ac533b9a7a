/** Dotted paths into what a rule sees; a final "?" marks what may be missing. */

/** Lists and optional values are taken whole. */
export type PathOf<T> = T extends readonly unknown[]
  ? never
  : T extends object
    ? { [K in keyof T & string]-?: PathAt<K, T[K]> }[keyof T & string]
    : never;
type PathAt<K extends string, V> = undefined extends V ? `${K}?` : K | `${K}.${PathOf<V>}`;

type Plain<P> = P extends `${infer Path}?` ? Path : P;
type First<P> = P extends `${infer Key}.${string}` ? Key : Plain<P>;
type Rest<P, K> = K extends string ? (P extends `${K}.${infer Path}` ? Path : never) : never;

/** Exactly what the paths name. */
export type Seen<T, P> = T extends object
  ? { readonly [K in keyof T as K & First<P>]: [Rest<P, K>] extends [never] ? T[K] : Seen<T[K], Rest<P, K>> }
  : T;
