import type { ColourRecoveryReasons, RedQuality } from "@sunfathom/planner";
import type { Texts } from "../../problems/texts.js";
import { depth, percent, shown } from "../format.js";

const QUALITY: Readonly<Record<RedQuality, string>> = {
  excellent: "excelente",
  acceptable: "aceptable",
  poor: "pobre",
  gone: "perdido",
};

/** Razones sobre cuánto color se recupera. */
export const colourRecoveryReasons: Texts<ColourRecoveryReasons, string> = {
  red_record: (p, u) =>
    `A ${depth(p.depth_m, u)} sin filtro, el ${percent(p.share * 100)} de la señal del canal rojo es luz roja de más de 600 nm. En un gris del ${percent(18)}, esa luz es ${shown(p.snr, 1)} veces el ruido: el rojo es ${QUALITY[p.quality]}. Para el rojo, 21 es excelente y 5,3 aceptable (según ISO 12232).`,
  filter_helps_red: (p, u) =>
    `A ${depth(p.depth_m, u)} el filtro no añade luz roja, pero permite exponer más el rojo antes de que se quemen el azul y el verde. La luz roja es ${shown(p.with_snr, 1)} veces el ruido en lugar de ${shown(p.without_snr, 1)}.`,
  filter_does_not_help_red: (p, u) =>
    `A ${depth(p.depth_m, u)} el filtro apenas ayuda al rojo: no hay luz para exponerlo más. La luz roja es ${shown(p.with_snr, 1)} veces el ruido con el filtro y ${shown(p.without_snr, 1)} sin él. Un filtro ayuda al rojo solo donde sobra luz.`,
  same_settings_no_gain: (p) =>
    `Con los mismos ISO, diafragma y tiempo de exposición, un filtro apenas limpia el rojo. Solo evita que entre algo de verde y azul en el canal rojo: la luz roja es ${shown(p.with_snr, 1)} veces el ruido con él y ${shown(p.without_snr, 1)} sin él.`,
  red_is_gone: (p, u) =>
    `${p.with_filter ? "Con el filtro" : "Sin filtro"}, el rojo se graba de forma aceptable hasta unos ${depth(p.acceptable_m, u)} y se pierde en el ruido a partir de unos ${depth(p.gone_m, u)}. Ninguna edición recupera un rojo que no se grabó.`,
  red_codes: (p, u) =>
    `A ${depth(p.depth_m, u)}, un paso de rojo en torno al gris medio tiene ${shown(p.codes_8)} niveles en 8 bits y ${shown(p.codes_10)} en 10. Con menos de unos 20, al estirarlos aparecen bandas.`,
};
