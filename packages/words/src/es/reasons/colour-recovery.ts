import type { ColourRecoveryReasons, RedQuality } from "@sunfathom/planner";
import type { Texts, TextUnits } from "../../problems/texts.js";
import { depth, depthNumber, percent, shown } from "../format.js";

const QUALITY: Readonly<Record<RedQuality, string>> = {
  excellent: "un rojo excelente",
  acceptable: "un rojo aceptable",
  poor: "un rojo pobre",
  gone: "el rojo está perdido",
};

/** Hasta dónde es bueno el rojo y desde dónde se pierde: ya en la superficie, o las dos cosas a la misma profundidad. */
function reach(p: ColourRecoveryReasons["red_is_gone"], u?: TextUnits): string {
  const [good, gone] = [depthNumber(p.acceptable_m, u), depthNumber(p.gone_m, u)];
  if (gone === "0") return "se pierde en el ruido casi desde la superficie";
  if (good === "0")
    return `es débil desde la superficie y se pierde en el ruido a partir de unos ${depth(p.gone_m, u)}`;
  return `se graba de forma aceptable hasta unos ${depth(p.acceptable_m, u)} y se pierde en el ruido ${good === gone ? "más abajo" : `a partir de unos ${depth(p.gone_m, u)}`}`;
}

/** Razones sobre cuánto color se recupera. */
export const colourRecoveryReasons: Texts<ColourRecoveryReasons, string> = {
  red_record: (p, u) =>
    `A ${depth(p.depth_m, u)} sin filtro, el ${percent(p.share * 100)} de la señal del canal rojo es luz roja de más de 600 nm. En un gris del ${percent(18)}, esa luz es ${shown(p.snr, 1)} veces el ruido: ${QUALITY[p.quality]}. Para el rojo, una relación de 21 es excelente y una de 5,3, aceptable (según ISO 12232).`,
  filter_helps_red: (p, u) =>
    `A ${depth(p.depth_m, u)} el filtro no añade luz roja, pero permite exponer más el rojo antes de que se quemen el azul y el verde. La luz roja es ${shown(p.with_snr, 1)} veces el ruido en lugar de ${shown(p.without_snr, 1)}.`,
  filter_does_not_help_red: (p, u) =>
    `A ${depth(p.depth_m, u)} el filtro apenas ayuda al rojo: no hay luz para exponerlo más. La luz roja es ${shown(p.with_snr, 1)} veces el ruido con el filtro y ${shown(p.without_snr, 1)} sin él. Un filtro ayuda al rojo solo donde sobra luz.`,
  same_settings_no_gain: (p) =>
    `Con el mismo ISO, el mismo diafragma y el mismo tiempo de exposición, un filtro apenas reduce el ruido del rojo. Solo evita que entre algo de verde y azul en el canal rojo: la luz roja es ${shown(p.with_snr, 1)} veces el ruido con él y ${shown(p.without_snr, 1)} sin él.`,
  red_is_gone: (p, u) =>
    `${p.with_filter ? "Con el filtro" : "Sin filtro"}, el rojo ${reach(p, u)}. Ninguna edición recupera un rojo que no se grabó.`,
  red_codes: (p, u) =>
    `A ${depth(p.depth_m, u)}, un paso de rojo en torno al gris medio tiene ${shown(p.codes_8)} niveles en 8 bits y ${shown(p.codes_10)} en 10. Con menos de unos 20, al estirarlos aparecen bandas.`,
};
