import type { MixedLightReasons } from "@sunfathom/planner";
import type { Texts, TextUnits } from "../../problems/texts.js";
import {
  brightness,
  capital,
  castOf,
  depth,
  distance,
  fromTo,
  grouped,
  lumens,
  redder,
  stops,
} from "../format.js";

function haveThem({ verdict, closer }: MixedLightReasons["to_lead"], u?: TextUnits): string {
  const from = closer ? ` Aus ${distance(closer.distance_m, u)} schaffen sie es.` : "";
  if (verdict === "enough") return "So viel haben deine Lampen.";
  if (verdict === "closer") return `Deine Lampen haben weniger.${from}`;
  if (verdict === "stronger")
    return "Das schaffen nur stärkere Lampen, mit mehr Hitze, Blendung und Gewicht.";
  return "So viel bringen keine Lampen, die Taucher mitnehmen: Arbeite mit dem Tageslicht, geh näher heran oder filme, wenn die Sonne tiefer steht.";
}

const two = (flux_lm: number): string => grouped(Number(flux_lm.toPrecision(2)));

/** Gründe zum Mischlicht. */
export const mixedLightReasons: Texts<MixedLightReasons, string> = {
  lamps_only: (p) =>
    `Deine Videolampen sind das einzige Licht: Mach den Weißabgleich in ihrem Licht. Das Wasser zwischen Lampe, Motiv und Kamera kostet trotzdem im Rot ${stops(p.red)}, im Grün ${stops(p.green)} und im Blau ${stops(p.blue)}; eine Karte im Arbeitsabstand ist deshalb besser als ein fester Kelvinwert.`,
  daylight_only: () => "Keine Videolampe ist an: Es gibt nichts zu mischen.",
  lights_fight: (p, u) =>
    `In ${depth(p.depth_m, u)} hat beim Weißabgleich im Tageslicht alles, was die Videolampen erreichen, ${castOf(p.split)}, ${redder(p.red_excess)}. Kein einzelner Weißabgleich bringt ihn weg.`,
  lamps_lead: (p, u) =>
    `In ${depth(p.depth_m, u)} sind deine Videolampen im Grün um ${stops(p.green)} heller als das Tageslicht. Mach den Weißabgleich in ihrem Licht; das Tageslicht färbt das Motiv kaum.`,
  daylight_leads: (p, u) =>
    `In ${depth(p.depth_m, u)} ist das Tageslicht im Grün um ${stops(-p.green)} heller als deine Videolampen. Mach den Weißabgleich im Tageslicht; das Licht der Videolampen fällt kaum auf.`,
  mixing_zone: (p, u) =>
    `${capital(fromTo(p.from_m, p.to_m, u))} mischen sich Videolampen und Tageslicht sichtbar.`,
  lit_haze: (p) =>
    `Der Backscatter zwischen Kamera und Motiv ist etwa ${brightness(p.percent)} so hell wie ein graues Motiv (${brightness(p.low)} bis ${brightness(p.high)}). Halte die Lampen weit weg vom Objektiv und richte sie nach außen, sodass nur der Rand des Lichtkegels das Motiv trifft, und geh näher heran.`,
  to_lead: (p, u) =>
    `Damit die Videolampen in ${depth(p.depth_m, u)} auf einem Motiv in ${distance(p.distance_m, u)} Abstand um ${stops(p.stops)} heller sind als das Tageslicht, brauchst du zusammen etwa ${lumens(p.likely_lm)} (${two(p.low_lm)} bis ${lumens(p.high_lm)}). ${haveThem(p, u)}`,
  upright_subject: () =>
    "Verglichen werden Videolampen und Tageslicht auf einem senkrecht stehenden Motiv, auf das nur ein Teil des Lichts von oben fällt.",
};
