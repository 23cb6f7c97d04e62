import type { CheckParameters, WantedType } from "@sunfathom/contract";
import type { Finding } from "./findings.js";

/** What is wrong with a value whose JSON type is not the one `wanted`. */
export function wrongType(value: unknown, pointer: string, wanted: WantedType): Finding {
  return { pointer, code: "wrong_type", parameters: { found: typeOf(value), wanted } };
}

function typeOf(value: unknown): CheckParameters["wrong_type"]["found"] {
  if (value === null) return "null";
  if (Array.isArray(value)) return "list";
  switch (typeof value) {
    case "object":
      return "object";
    case "number":
      return Number.isFinite(value) ? "number" : "not_a_finite_number";
    case "string":
      return "text";
    case "boolean":
      return "boolean";
    default:
      return "no_json";
  }
}
