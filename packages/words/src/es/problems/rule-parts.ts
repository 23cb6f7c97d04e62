import type { SceneRuleParameters } from "@sunfathom/contract";
import { type FieldText, fieldText as text } from "../../problems/texts.js";
import { asGiven, spoken } from "../format.js";

/** Textos que comparten varias reglas. */
export const missing = (field: string): string => `Falta ${field}.`;

/** @param field la lista */
export const notRising =
  (field: string) =>
  (p: SceneRuleParameters["kd_samples_rising"]): FieldText =>
    text(
      `En ${field} las longitudes de onda tienen que ir en aumento: ${asGiven(p.wavelength_nm)} nm aparece después de ${asGiven(p.before_nm)} nm.`,
      `más de ${asGiven(p.before_nm)} nm`,
    );

export const notWhole = (p: SceneRuleParameters["card_gains_whole"]): FieldText =>
  text(
    `En esta toma de la tarjeta ${p.missing.length === 1 ? "falta" : "faltan"} ${spoken(p.missing)}.`,
    `todos los de ${p.all.join(", ")}, o ninguno`,
  );

/** @param whose «del filtro del objetivo» */
export const halfFilter =
  (whose: string) =>
  (p: SceneRuleParameters["lens_filter_pair"]): FieldText =>
    text(`Falta ${p.missing} ${whose}.`, p.fields.join(" junto con "));

export const repeatedId = ({ first }: SceneRuleParameters["kit_ids_unique"]): FieldText =>
  text(`Ese id ya lo tiene ${first}.`, "otro id");

type Limits = SceneRuleParameters["iso_limits_in_order"];

export const limitsInOrder =
  (relation: "no mayor que" | "menor que") =>
  ({ low, high }: Limits): FieldText =>
    text(`${named(low)} no es menor que ${named(high)}.`, `${low.field} ${relation} ${high.field}`);

export const withinLimits = ({ value, low, high }: SceneRuleParameters["iso_within_limits"]): FieldText =>
  text(
    `${value} es ${value < low.value ? `menor que ${named(low)}` : `mayor que ${named(high)}`}.`,
    `de ${low.value} a ${high.value}, u otros límites en ${low.field} y ${high.field}`,
  );

const named = ({ field, value, stated }: Limits["low"]): string =>
  `${field} (${value}${stated ? "" : " por defecto"})`;
