import type { Violation } from "./rule.js";

/**
 * Kind and density of a filter mean nothing without each other.
 * @param prefix of the pointers, for example `/lamps/0/` or `/lamp_`
 */
export function filterPair(
  prefix: string,
  kind: string | undefined,
  density: number | undefined,
): Violation[] {
  if ((kind === undefined) === (density === undefined)) return [];
  const [there, missing] =
    kind === undefined ? ["filter_density", "filter_kind"] : ["filter_kind", "filter_density"];
  const name = prefix.slice(prefix.lastIndexOf("/") + 1);
  return [
    {
      pointer: `${prefix}${there}`,
      message: `${name}${missing} is missing.`,
      allowed: `${name}filter_kind together with ${name}filter_density`,
    },
  ];
}
