import type { FieldError, JsonSchema } from "@sunfathom/contract";
import type { Check } from "./check.js";
import { nearest } from "./nearest.js";
import { otherUnit } from "./other-unit.js";
import { member } from "./pointer.js";
import { wrongType } from "./wrong-type.js";

/** Enough of a name to recognise it by. */
const shownLength = 64;

export function object(schema: JsonSchema, compile: (schema: JsonSchema) => Check): Check {
  // A map, so that no name finds what every object inherits.
  const checks = new Map(
    Object.entries(schema.properties ?? {}).map(([name, property]) => [
      name,
      { check: compile(property), step: member("", name) },
    ]),
  );
  const required = schema.required ?? [];
  const refusesOthers = schema.additionalProperties === false;
  return (value, pointer, findings) => {
    if (!isObject(value)) {
      findings.add(() => wrongType(value, pointer, "an object"));
      return;
    }
    for (const [name, item] of Object.entries(value)) {
      if (findings.more) return;
      // A program that calls this without JSON may well leave a field undefined.
      if (item === undefined) continue;
      const known = checks.get(name);
      if (known !== undefined) known.check(item, pointer + known.step, findings);
      else if (refusesOthers)
        findings.add(() => unknownField({ name, value: item }, pointer, [...checks.keys()], findings.meant));
    }
    for (const name of required) {
      if (value[name] === undefined) {
        findings.add(() => ({
          pointer: member(pointer, name),
          code: "missing_field",
          message: `${name} is missing.`,
          allowed: `needed: ${required.join(", ")}`,
        }));
      }
    }
  };
}

function isObject(value: unknown): value is Record<string, unknown> {
  return typeof value === "object" && value !== null && !Array.isArray(value);
}

function unknownField(
  { name, value }: { name: string; value: unknown },
  pointer: string,
  names: readonly string[],
  meant: Set<string>,
): FieldError {
  const shown = name.length > shownLength ? `${name.slice(0, shownLength)}...` : name;
  const error = {
    pointer: member(pointer, name),
    code: "unknown_field",
    message: `There is no field ${shown}.`,
  };
  const other = otherUnit(name, value, names);
  if (other !== undefined) {
    const { field, value: sent, from_unit, to_unit, converted } = other;
    meant.add(field);
    // No `did_you_mean`: the right name with the number as it was sent would be wrong.
    return { ...error, allowed: `${sent} ${from_unit} is ${converted} ${to_unit}: send ${field}` };
  }
  const near = nearest(name, names);
  return {
    ...error,
    allowed: near ?? names.join(", "),
    ...(near === undefined ? {} : { did_you_mean: near }),
  };
}
