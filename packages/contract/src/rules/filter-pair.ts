import { broken, type Violation } from "./rule.js";

/** A kind without a density, or the other way round. */
export interface HalfFilter {
  missing: string;
  fields: readonly string[];
}

/**
 * Kind and density of a filter mean nothing without each other.
 * @param prefix of the pointers, for example `/lamps/0/` or `/lamp_`
 */
export function filterPair(
  prefix: string,
  kind: string | undefined,
  density: number | undefined,
): Violation<HalfFilter>[] {
  if ((kind === undefined) === (density === undefined)) return [];
  const [there, missing] =
    kind === undefined ? ["filter_density", "filter_kind"] : ["filter_kind", "filter_density"];
  const name = prefix.slice(prefix.lastIndexOf("/") + 1);
  return [
    broken(`${prefix}${there}`, {
      missing: `${name}${missing}`,
      fields: [`${name}filter_kind`, `${name}filter_density`],
    }),
  ];
}
