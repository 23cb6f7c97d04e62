import type { SceneRuleParameters } from "@sunfathom/contract";
import { type FieldText, fieldText as text } from "../../problems/texts.js";
import { asGiven, spoken } from "../format.js";

/** Textes que plusieurs règles partagent. */
export const missing = (field: string): string => `Il manque ${field}.`;

/** @param field la liste */
export const notRising =
  (field: string) =>
  (p: SceneRuleParameters["kd_samples_rising"]): FieldText =>
    text(
      `Dans ${field}, les longueurs d’onde doivent aller en croissant : ${asGiven(p.wavelength_nm)} nm vient après ${asGiven(p.before_nm)} nm.`,
      `plus de ${asGiven(p.before_nm)} nm`,
    );

export const notWhole = (p: SceneRuleParameters["card_gains_whole"]): FieldText =>
  text(
    `Il manque ${spoken(p.missing)} à cette prise de la charte.`,
    `tous les champs ${p.all.join(", ")}, ou aucun`,
  );

/** @param whose « au filtre de l’objectif » */
export const halfFilter =
  (whose: string) =>
  (p: SceneRuleParameters["lens_filter_pair"]): FieldText =>
    text(`Il manque ${p.missing} ${whose}.`, p.fields.join(" avec "));

export const repeatedId = ({ first }: SceneRuleParameters["kit_ids_unique"]): FieldText =>
  text(`Cet id est déjà celui de ${first}.`, "un autre id");

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
