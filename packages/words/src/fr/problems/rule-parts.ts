import type { SceneRuleParameters } from "@sunfathom/contract";
import { type FieldText, fieldText as text } from "../../problems/texts.js";
import { spoken } from "../format.js";

/** Textes que plusieurs règles partagent. */
export const missing = (field: string): string => `Il manque ${field}.`;

export const notRising = (p: SceneRuleParameters["kd_samples_rising"]): FieldText =>
  text(`${p.wavelength_nm} nm vient après ${p.before_nm} nm.`, `plus de ${p.before_nm} nm`);

export const notWhole = (p: SceneRuleParameters["card_gains_whole"]): FieldText =>
  text(`Il manque ${spoken(p.missing)}.`, `tous les champs ${p.all.join(", ")}, ou aucun`);

export const halfFilter = (p: SceneRuleParameters["lens_filter_pair"]): FieldText =>
  text(missing(p.missing), p.fields.join(" avec "));

export const repeatedId = ({ first }: SceneRuleParameters["kit_ids_unique"]): FieldText =>
  text(`${first} a le même id.`, "un autre id");

type Limits = SceneRuleParameters["iso_limits_in_order"];

export const limitsInOrder =
  (relation: "pas au-dessus de" | "au-dessous de") =>
  ({ low, high }: Limits): FieldText =>
    text(`${named(low)} n’est pas au-dessous de ${named(high)}.`, `${low.field} ${relation} ${high.field}`);

export const withinLimits = ({ value, low, high }: SceneRuleParameters["iso_within_limits"]): FieldText =>
  text(
    `${value} est ${value < low.value ? `au-dessous de ${named(low)}` : `au-dessus de ${named(high)}`}.`,
    `de ${low.value} à ${high.value}, ou d’autres limites dans ${low.field} et ${high.field}`,
  );

const named = ({ field, value, stated }: Limits["low"]): string =>
  `${field} (${value}${stated ? "" : " par défaut"})`;
