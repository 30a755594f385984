/** A JSON Schema (draft 2020-12), as plain data. */
export interface JsonSchema {
  readonly [keyword: string]: unknown;
}

/** The dialect that the schemas are written in. */
export const schemaDialect = "https://json-schema.org/draft/2020-12/schema";

/** A property that may be absent. */
interface Optional {
  readonly optional: JsonSchema;
}

/** Marks a property as one that may be absent. */
export function optional(schema: JsonSchema): Optional {
  return { optional: schema };
}

/** An object that has these properties and no others. */
export function object(
  description: string,
  properties: Readonly<Record<string, JsonSchema | Optional>>,
): JsonSchema {
  const entries = Object.entries(properties);
  return {
    description,
    type: "object",
    properties: Object.fromEntries(
      entries.map(([name, schema]) => [name, isOptional(schema) ? schema.optional : schema]),
    ),
    required: entries.filter(([, schema]) => !isOptional(schema)).map(([name]) => name),
    additionalProperties: false,
  };
}

/** A list. */
export function list(description: string, items: JsonSchema): JsonSchema {
  return { description, type: "array", items };
}

/** A text. */
export function text(description: string): JsonSchema {
  return { description, type: "string" };
}

/** One of some words. */
export function oneOf(description: string, words: readonly string[]): JsonSchema {
  return { description, type: "string", enum: [...words] };
}

/** A whole number. */
export function whole(description: string, minimum?: number): JsonSchema {
  return { description, type: "integer", ...(minimum === undefined ? {} : { minimum }) };
}

/** True or false. */
export function yesOrNo(description: string): JsonSchema {
  return { description, type: "boolean" };
}

/** A calendar date. */
export function date(description: string): JsonSchema {
  return { description, type: "string", pattern: "^\\d{4}-\\d{2}-\\d{2}$" };
}

/** A shared definition of the same file. */
export function shared(description: string, name: string): JsonSchema {
  return { description, $ref: `#/$defs/${name}` };
}

function isOptional(schema: JsonSchema | Optional): schema is Optional {
  return "optional" in schema;
}
