import { type JsonSchema, referenced } from "@sunfathom/contract";
import { schemaOf } from "./components.js";

/** A schema that stands on its own: where it refers to a component, with what that says, and its own description. */
export function withoutReference({ $ref, ...rest }: JsonSchema): JsonSchema {
  return $ref === undefined ? rest : { ...schemaOf(referenced($ref)), ...rest };
}
