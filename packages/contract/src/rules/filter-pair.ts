import { broken, type Violation } from "./rule.js";

/** A kind without a density, or the other way round. */
export interface HalfFilter {
  missing: string;
  fields: readonly string[];
}

/**
 * Kind and strength of a filter mean nothing without each other.
 * @param prefix of the pointers, for example `/lamps/0/` or `/lamp_`
 * @param stops where a filter's strength can be given in stops too
 */
export function filterPair(
  prefix: string,
  kind: string | undefined,
  density: number | undefined,
  stops?: number,
): Violation<HalfFilter>[] {
  const strength = density ?? stops;
  if ((kind === undefined) === (strength === undefined)) return [];
  const given = density === undefined && stops !== undefined ? "filter_stops" : "filter_density";
  const [there, missing] = kind === undefined ? [given, "filter_kind"] : ["filter_kind", "filter_density"];
  const name = prefix.slice(prefix.lastIndexOf("/") + 1);
  return [
    broken(`${prefix}${there}`, {
      missing: `${name}${missing}`,
      fields: [`${name}filter_kind`, `${name}${kind === undefined ? given : "filter_density"}`],
    }),
  ];
}
