import type { JsonSchema } from "@sunfathom/contract";
import type { Check } from "./check.js";
import { wrongType } from "./wrong-type.js";

export function list(schema: JsonSchema, compile: (schema: JsonSchema) => Check): Check {
  const { items, minItems = 0, maxItems = Number.POSITIVE_INFINITY } = schema;
  if (items === undefined) throw new Error("A list without a schema of its items checks nothing.");
  const check = compile(items);
  const allowed =
    maxItems === Number.POSITIVE_INFINITY ? `${minItems} or more` : `${minItems} to ${maxItems}`;
  return (value, pointer, findings) => {
    if (!Array.isArray(value)) {
      findings.add(() => wrongType(value, pointer, "a list"));
      return;
    }
    if (value.length < minItems || value.length > maxItems) {
      findings.add(() => ({
        pointer,
        code: "wrong_length",
        message: `The list has ${value.length} entries.`,
        allowed,
      }));
      return;
    }
    for (let index = 0; index < value.length && !findings.more; index += 1)
      check(value[index], `${pointer}/${index}`, findings);
  };
}
