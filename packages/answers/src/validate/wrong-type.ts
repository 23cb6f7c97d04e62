import type { FieldError } from "@sunfathom/contract";

/** The error of a value whose JSON type is not the one `wanted`. */
export function wrongType(value: unknown, pointer: string, wanted: string): FieldError {
  return {
    pointer,
    code: "wrong_type",
    message: value === null ? "null is no value: leave the field out." : `This is ${typeName(value)}.`,
    allowed: wanted,
  };
}

function typeName(value: unknown): string {
  if (Array.isArray(value)) return "a list";
  switch (typeof value) {
    case "object":
      return "an object";
    case "number":
      return Number.isFinite(value) ? "a number" : "not a finite number";
    case "string":
      return "text";
    case "boolean":
      return "true or false";
    default:
      return "nothing that JSON can hold";
  }
}
