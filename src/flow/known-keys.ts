/** Which keys may stand at a place in a file, read from the published form of its shape. */

import { z } from 'zod';

interface Schema {
  readonly $ref?: string;
  readonly properties?: Readonly<Record<string, Schema>>;
  readonly additionalProperties?: Schema | boolean;
  readonly items?: Schema;
  readonly anyOf?: readonly Schema[];
  readonly oneOf?: readonly Schema[];
  readonly const?: unknown;
  readonly enum?: readonly unknown[];
  readonly $defs?: Readonly<Record<string, Schema>>;
}

const published = new WeakMap<z.ZodType, Schema>();

/** The keys an object at this path of `root` may have; none where the shape has no object. */
export function keysAt(
  shape: z.ZodType,
  root: unknown,
  path: readonly PropertyKey[],
): readonly string[] {
  const schema = published.get(shape) ?? (z.toJSONSchema(shape, { io: 'input' }) as Schema);
  published.set(shape, schema);
  let value = root;
  let here = branches(schema, value, schema);
  for (const part of path) {
    value = inside(value, part);
    here = here.flatMap((one) => {
      const next = descend(one, part);
      return next ? branches(next, value, schema) : [];
    });
  }
  return [...new Set(here.flatMap((one) => Object.keys(one.properties ?? {})))];
}

/** The value under one key, and nothing where there is no such thing. */
export function inside(value: unknown, part: PropertyKey): unknown {
  if (typeof value !== 'object' || value === null || !Object.hasOwn(value, part)) return undefined;
  return (value as Record<PropertyKey, unknown>)[part];
}

function descend(schema: Schema, part: PropertyKey): Schema | undefined {
  if (typeof part === 'number') return schema.items;
  const { properties = {}, additionalProperties: others } = schema;
  if (typeof part === 'string' && Object.hasOwn(properties, part)) return properties[part];
  return typeof others === 'object' ? others : undefined;
}

/** Follows references, and of several shapes keeps those that the value's own kind allows. */
function branches(schema: Schema, value: unknown, root: Schema): readonly Schema[] {
  if (schema.$ref !== undefined) {
    const name = schema.$ref.replace(/^#\/\$defs\//, '');
    const target = schema.$ref === '#' ? root : root.$defs?.[name];
    return target ? branches(target, value, root) : [];
  }
  const several = schema.anyOf ?? schema.oneOf;
  if (several) return several.flatMap((one) => branches(one, value, root));
  const kind = schema.properties?.kind;
  const kinds = kind?.const === undefined ? kind?.enum : [kind.const];
  const meant = inside(value, 'kind');
  return kinds && meant !== undefined && !kinds.includes(meant) ? [] : [schema];
}
