import type { SceneRuleParameters } from "@sunfathom/contract";
import { type FieldText, fieldText as text } from "../../problems/texts.js";
import { asGiven, spoken } from "../format.js";

/** Texte, die mehrere Regeln teilen. */
export const missing = (field: string): string => `${field} fehlt.`;

/** @param field die Liste */
export const notRising =
  (field: string) =>
  (p: SceneRuleParameters["kd_samples_rising"]): FieldText =>
    text(
      `In ${field} müssen die Wellenlängen ansteigen: Auf ${asGiven(p.before_nm)} nm folgt ${asGiven(p.wavelength_nm)} nm.`,
      `über ${asGiven(p.before_nm)} nm`,
    );

export const notWhole = (p: SceneRuleParameters["card_gains_whole"]): FieldText =>
  text(
    `Bei dieser Aufnahme der Karte ${p.missing.length === 1 ? "fehlt" : "fehlen"} ${spoken(p.missing)}.`,
    `alle von ${p.all.join(", ")}, oder keines`,
  );

/** @param whose „beim Filter auf dem Objektiv“ */
export const halfFilter =
  (whose: string) =>
  (p: SceneRuleParameters["lens_filter_pair"]): FieldText =>
    text(`${p.missing} fehlt ${whose}.`, p.fields.join(" zusammen mit "));

export const repeatedId = ({ first }: SceneRuleParameters["kit_ids_unique"]): FieldText =>
  text(`Die id ist schon vergeben, an ${first}.`, "eine andere id");

type Limits = SceneRuleParameters["iso_limits_in_order"];

export const limitsInOrder =
  (relation: "nicht über" | "unter") =>
  ({ low, high }: Limits): FieldText =>
    text(`${named(low)} liegt nicht unter ${named(high)}.`, `${low.field} ${relation} ${high.field}`);

export const withinLimits = ({ value, low, high }: SceneRuleParameters["iso_within_limits"]): FieldText =>
  text(
    `${value} liegt ${value < low.value ? `unter ${named(low)}` : `über ${named(high)}`}.`,
    `${low.value} bis ${high.value}, oder andere Grenzen in ${low.field} und ${high.field}`,
  );

const named = ({ field, value, stated }: Limits["low"]): string =>
  `${field} (${value}${stated ? "" : ", wenn nichts angegeben ist"})`;
