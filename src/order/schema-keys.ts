/** Which keys a schema takes where, for hints. */
import type { core } from 'zod/mini';

type Schema = core.$ZodType;

/** Without list places ("buckles.single"). */
export interface KeyPlace {
  path: string;
  keys: readonly string[];
}

/** Outermost first. */
export function keyPlaces(schema: Schema, path = ''): KeyPlace[] {
  return inside(schema).flatMap((shape) => [
    { path, keys: Object.keys(shape) },
    ...Object.entries(shape).flatMap(([key, child]) =>
      keyPlaces(child, path === '' ? key : `${path}.${key}`),
    ),
  ]);
}

/** Behind options, lists and conversions. */
function inside(schema: Schema): Readonly<Record<string, Schema>>[] {
  const { def } = (schema as core.$ZodTypes)._zod;
  if (def.type === 'object') return [def.shape];
  if (def.type === 'optional') return inside(def.innerType);
  if (def.type === 'array') return inside(def.element);
  if (def.type === 'pipe') return inside(def.in);
  return def.type === 'union' ? def.options.flatMap(inside) : [];
}
