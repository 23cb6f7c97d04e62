import type { SceneRuleParameters } from "@sunfathom/contract";
import { type FieldText, fieldText as text } from "../../problems/texts.js";

/** Texts that several rules share. */
export const missing = (field: string): string => `${field} is missing.`;

/** @param field the list */
export const notRising =
  (field: string) =>
  (p: SceneRuleParameters["kd_samples_rising"]): FieldText =>
    text(
      `In ${field} the wavelengths have to rise: ${p.wavelength_nm} nm follows ${p.before_nm} nm.`,
      `above ${p.before_nm} nm`,
    );

export const notWhole = (p: SceneRuleParameters["card_gains_whole"]): FieldText =>
  text(`This card sample has no ${p.missing.join(" and no ")}.`, `all of ${p.all.join(", ")}, or none`);

/** @param whose "the filter on the lens" */
export const halfFilter =
  (whose: string) =>
  (p: SceneRuleParameters["lens_filter_pair"]): FieldText =>
    text(`${p.missing} of ${whose} is missing.`, p.fields.join(" together with "));

export const repeatedId = ({ first }: SceneRuleParameters["kit_ids_unique"]): FieldText =>
  text(`The id is taken already, by ${first}.`, "another id");

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
