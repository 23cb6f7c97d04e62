import type { SceneRuleParameters } from "@sunfathom/contract";
import { type FieldText, fieldText as text } from "../../problems/texts.js";

/** Texts that several rules share. */
export const missing = (field: string): string => `${field} is missing.`;

export const notRising = (p: SceneRuleParameters["kd_samples_rising"]): FieldText =>
  text(`${p.wavelength_nm} nm follows ${p.before_nm} nm.`, `above ${p.before_nm} nm`);

export const notWhole = (p: SceneRuleParameters["card_gains_whole"]): FieldText =>
  text(
    `${p.missing.join(" and ")} ${p.missing.length === 1 ? "is" : "are"} missing.`,
    `all of ${p.all.join(", ")}, or none`,
  );

export const halfFilter = (p: SceneRuleParameters["lens_filter_pair"]): FieldText =>
  text(missing(p.missing), p.fields.join(" together with "));

export const repeatedId = ({ first }: SceneRuleParameters["kit_ids_unique"]): FieldText =>
  text(`${first} has the same id.`, "another id");

type Limits = SceneRuleParameters["iso_limits_in_order"];

export const limitsInOrder =
  (relation: string) =>
  ({ low, high }: Limits): FieldText =>
    text(`${named(low)} is not below ${named(high)}.`, `${low.field} ${relation} ${high.field}`);

export const withinLimits = ({ value, low, high }: SceneRuleParameters["iso_within_limits"]): FieldText =>
  text(
    `${value} is ${value < low.value ? `below ${named(low)}` : `above ${named(high)}`}.`,
    `${low.value} to ${high.value}, or other limits in ${low.field} and ${high.field}`,
  );

const named = ({ field, value, stated }: Limits["low"]): string =>
  `${field} (${value}${stated ? "" : " by default"})`;
