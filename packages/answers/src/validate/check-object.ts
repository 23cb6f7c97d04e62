import type { JsonSchema } from "@sunfathom/contract";
import type { Check } from "./check.js";
import type { Finding, Findings } from "./findings.js";
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
      findings.add(() => wrongType(value, pointer, { type: "object" }));
      return;
    }
    for (const [name, item] of Object.entries(value)) {
      if (findings.more) return;
      // A program that calls this without JSON may well leave a field undefined.
      if (item === undefined) continue;
      const known = checks.get(name);
      if (known !== undefined) known.check(item, pointer + known.step, findings);
      else if (refusesOthers)
        findings.add(() => unknownField({ name, value: item }, pointer, [...checks.keys()], findings));
    }
    for (const name of required) {
      if (value[name] === undefined) {
        findings.add(() => ({
          pointer: member(pointer, name),
          code: "missing_field",
          parameters: { name, needed: required },
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
  { meant }: Findings,
): Finding {
  const shown = name.length > shownLength ? `${name.slice(0, shownLength)}...` : name;
  const at = { pointer: member(pointer, name), code: "unknown_field" } as const;
  // Rules are about fields of the scene itself, not about those of its parts.
  const means = (field: string) => pointer === "" && meant.add(field);
  const other = otherUnit(name, value, names);
  if (other !== undefined) {
    means(other.field);
    // No `did_you_mean`: the right name with the number as it was sent would be wrong.
    return { ...at, parameters: { name: shown, ...other } };
  }
  const near = nearest(name, names);
  if (near !== undefined) means(near);
  return {
    ...at,
    parameters: { name: shown },
    allowed: near ?? names.join(", "),
    ...(near === undefined ? {} : { did_you_mean: near }),
  };
}
