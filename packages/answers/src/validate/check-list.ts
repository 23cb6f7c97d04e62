import type { JsonSchema } from "@sunfathom/contract";
import type { Check } from "./check.js";
import { wrongType } from "./wrong-type.js";

export function list(schema: JsonSchema, compile: (schema: JsonSchema) => Check): Check {
  const { items = {}, minItems = 0, maxItems = Number.POSITIVE_INFINITY } = schema;
  const check = compile(items);
  const limits = {
    min_length: minItems,
    ...(maxItems === Number.POSITIVE_INFINITY ? {} : { max_length: maxItems }),
  };
  return (value, pointer, findings) => {
    if (!Array.isArray(value)) {
      findings.add(() => wrongType(value, pointer, { type: "list" }));
      return;
    }
    if (value.length < minItems || value.length > maxItems) {
      findings.add(() => ({
        pointer,
        code: "wrong_length",
        parameters: { of: "list", length: value.length, ...limits },
      }));
      return;
    }
    for (let index = 0; index < value.length && !findings.more; index += 1)
      check(value[index], `${pointer}/${index}`, findings);
  };
}
