/** Both schemas as JSON Schema (draft 2020-12), for editors. */
import * as z from 'zod/mini';
import { jsonOf, type Json } from './leaves.ts';
import { orderSchema } from './order-schema.ts';
import { shopSchema } from './shop-schema.ts';

/** For one document. */
export function orderJsonSchema(): Json {
  return toJson(orderSchema, 'A cinchwright order');
}

/** For the whole file. */
export function shopJsonSchema(): Json {
  return toJson(shopSchema, 'A cinchwright shop file');
}

/** Editors take 2417 for a number, so our description of a leaf replaces zod's "string". */
function toJson(schema: z.ZodMiniType, title: string): Json {
  const made = z.toJSONSchema(schema, {
    io: 'input',
    unrepresentable: 'any',
    override: ({ zodSchema, jsonSchema }) => {
      Object.assign(jsonSchema, jsonOf.get(zodSchema));
    },
  });
  const { $schema, ...rest } = made as Json;
  return { $schema, title, ...rest };
}
