/** The part of JSON Schema that components of the contract use, plus the unit and decimals of a number. */
export interface JsonSchema {
  $ref?: string;
  type?: "object" | "array" | "string" | "number" | "integer" | "boolean";
  description?: string;
  examples?: readonly unknown[];
  default?: unknown;
  const?: unknown;
  enum?: readonly string[];
  minimum?: number;
  maximum?: number;
  minLength?: number;
  maxLength?: number;
  pattern?: string;
  minItems?: number;
  maxItems?: number;
  items?: JsonSchema;
  properties?: Readonly<Record<string, JsonSchema>>;
  required?: readonly string[];
  additionalProperties?: boolean;
  "x-unit"?: string;
  "x-decimals"?: number;
}

/** Keywords that `JsonSchema` knows, each of which code that reads schemas must heed or know that it may not. */
export const knownKeywords: ReadonlySet<string> = new Set([
  "$ref",
  "type",
  "description",
  "examples",
  "default",
  "const",
  "enum",
  "minimum",
  "maximum",
  "minLength",
  "maxLength",
  "pattern",
  "minItems",
  "maxItems",
  "items",
  "properties",
  "required",
  "additionalProperties",
  "x-unit",
  "x-decimals",
]);

/** A reference to the component `name`. */
export function reference(name: string): string {
  return `${name}#`;
}

/** The component that `ref` refers to. */
export function referenced(ref: string): string {
  return ref.slice(0, -1);
}
