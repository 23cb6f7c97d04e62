import type { JsonSchema } from "@sunfathom/contract";
import type { Check } from "./check.js";
import { wrongType } from "./wrong-type.js";

export function number(schema: JsonSchema): Check {
  const { minimum = Number.NEGATIVE_INFINITY, maximum = Number.POSITIVE_INFINITY } = schema;
  const whole = schema.type === "integer";
  const unit = schema["x-unit"] === undefined || schema["x-unit"] === "1" ? "" : ` ${schema["x-unit"]}`;
  const allowed = `${whole ? "a whole number, " : ""}${minimum} to ${maximum}${unit}`;
  return (value, pointer, findings) => {
    if (typeof value !== "number" || !Number.isFinite(value)) {
      findings.add(() => wrongType(value, pointer, `a number, ${minimum} to ${maximum}${unit}`));
    } else if (value < minimum || value > maximum) {
      findings.add(() => ({
        pointer,
        code: "out_of_range",
        message: `${value}${unit} is ${value < minimum ? "too little" : "too much"}.`,
        allowed,
      }));
    } else if (whole && !Number.isInteger(value)) {
      findings.add(() => ({ pointer, code: "not_whole", message: `${value} is not whole.`, allowed }));
    }
  };
}
