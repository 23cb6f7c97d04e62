import type { JsonSchema, NumberRange } from "@sunfathom/contract";
import type { Check } from "./check.js";
import { wrongType } from "./wrong-type.js";

export function number(schema: JsonSchema): Check {
  const { minimum = Number.NEGATIVE_INFINITY, maximum = Number.POSITIVE_INFINITY, "x-unit": unit } = schema;
  const range: NumberRange = {
    minimum,
    maximum,
    ...(unit === undefined || unit === "1" ? {} : { unit }),
    whole: schema.type === "integer",
  };
  return (value, pointer, findings) => {
    if (typeof value !== "number" || !Number.isFinite(value))
      findings.add(() => wrongType(value, pointer, { type: "number", ...range }));
    else if (value < minimum || value > maximum)
      findings.add(() => ({ pointer, code: "out_of_range", parameters: { value, ...range } }));
    else if (range.whole && !Number.isInteger(value))
      findings.add(() => ({ pointer, code: "not_whole", parameters: { value, ...range } }));
  };
}
