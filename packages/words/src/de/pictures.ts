import type { Estimate } from "@sunfathom/planner";
import type { ChartUnderWaterTexts, LightWithDepthTexts, PictureTexts } from "../picture-texts.js";
import type { TextUnits } from "../problems/texts.js";
import { colourStrip } from "./colour-strip.js";
import { cuttingTemplate } from "./cutting-template.js";
import { exposureBudget } from "./exposure-budget.js";
import { filterMap } from "./filter-map.js";
import { filterName } from "./filter-name.js";
import { capital, depth, depthNumber, percent, shown, strength } from "./format.js";
import { grade } from "./grade.js";
import { mixedLightMap } from "./mixed-light-map.js";
import { redInPost } from "./red-in-post.js";
import { slate } from "./slate.js";

/** So genau, wie es jemandem nützt. */
const percentOf = (value: number): string =>
  value < 0.1 ? `unter ${percent(0.1, 1)}` : percent(value, value < 1 ? 1 : 0);

const at = ({ low, likely, high }: Estimate, u?: TextUnits): string =>
  depthNumber(low, u) === depthNumber(high, u)
    ? depth(likely, u)
    : `${depth(likely, u)} (${depthNumber(low, u)} bis ${depth(high, u)})`;

const lightWithDepth: LightWithDepthTexts = {
  headline: ({ red_to_tenth_depth_m }, u) =>
    `In ${depth(red_to_tenth_depth_m, u)} ist vom roten Licht noch ein Zehntel da`,
  left: "Übriges Licht nach Tiefe",
  at_depth: ({ depth_m }, u) => depth(depth_m, u),
  at_percent: ({ percent: value }) => percent(value),
  no_daylight: "Auf diesem Tauchgang gibt es kein Tageslicht: So nimmt das Wasser Licht von oben weg.",
  names: { red: "Rot", green: "Grün", blue: "Blau", eye: "Auge" },
  left_at: ({ depth_m }, u) => `Übrig in ${depth(depth_m, u)}`,
  percent: ({ percent: value }) => percentOf(value),
  tenth: (estimate, u) => `Rot auf ein Zehntel: ${at(estimate, u)}`,
  hundredth: (estimate, u) => `Rot auf ein Hundertstel: ${at(estimate, u)}`,
  dive: ({ min_depth_m, max_depth_m }, u) =>
    depthNumber(min_depth_m, u) === depthNumber(max_depth_m, u)
      ? `Du filmst in ${depth(max_depth_m, u)}`
      : `Du filmst von ${depthNumber(min_depth_m, u)} bis ${depth(max_depth_m, u)}`,
  shaded: `Schattiert: In 8 von 10 Fällen verläuft die Kurve dort. ${percent(100)} ist das Licht gleich unter der Oberfläche.`,
  bands: "Rot ist Licht von 600 bis 700 nm, Grün von 500 bis 600, Blau von 400 bis 500.",
  description: ({ max_depth_m, left_at_max_percent: left, end_m, ...red }, u) =>
    [
      `Kurven des Lichts, das von der Oberfläche bis ${depth(end_m, u)} übrig bleibt, je eine für Rot, Grün, Blau und das Auge.`,
      `Rot ist in ${at(red.red_to_tenth_depth_m, u)} auf ein Zehntel gesunken, in ${at(red.red_to_hundredth_depth_m, u)} auf ein Hundertstel.`,
      `In ${depth(max_depth_m, u)} sind vom Rot ${percentOf(left.red.likely)} übrig, vom Grün ${percentOf(left.green.likely)}, vom Blau ${percentOf(left.blue.likely)} und von dem, was das Auge sieht, ${percentOf(left.eye.likely)}.`,
    ].join(" "),
};

const finishes = { basic_edit: "Bearbeitet: Regler", matched: "Nach einer Farbkarte angeglichen" };
const finished = { basic_edit: "nach der Bearbeitung", matched: "nach einer Farbkarte angeglichen" };

const chartUnderWater: ChartUnderWaterTexts = {
  headline: ({ filter, is_advised, depth_m }, u) =>
    is_advised
      ? `Was ${filterName(filter, "wer")} in ${depth(depth_m, u)} bewirkt`
      : `In ${depth(depth_m, u)} ohne Filter filmen`,
  truth: "Die Farbkarte bei Tageslicht",
  reading:
    "24 Farben nach ihrem Ton, Grau in der Mitte. In den Kreisen darunter zeigt jedes Feld, was die Kamera aus einer Farbe macht, und am inneren Rand die wahre Farbe: Je weniger du von diesem Rand siehst, desto besser.",
  daylight: "Einstellung Tageslicht",
  balanced: "Nach dem Weißabgleich",
  finished: ({ finish }) => finishes[finish],
  without: "Ohne Filter",
  filtered: ({ filter, is_advised }) =>
    `${capital(filterName(filter, "wer"))}${is_advised ? "" : ", hier nicht empfohlen"}`,
  off: ({ delta_e00 }) => `${strength(delta_e00)}er Fehler, ${shown(delta_e00)}`,
  screen:
    "Die Fehler sind mittlere CIEDE2000 mit dem Rauschen, das die Felder nicht zeigen: Etwa 1 gilt uns als das Kleinste, was man sieht. Farben, die ein Bildschirm nicht zeigen kann, sind auf das beschnitten, was er kann.",
  description: ({ depth_m, filter, without, filtered, finish }, u) =>
    [
      `Eine Karte mit 24 Farben in ${depth(depth_m, u)}, wie eine Kamera sie aufnimmt, ohne Filter und mit Filter: ${filterName(filter, "wer")}.`,
      `Farbfehler ohne Filter: ${shown(without.daylight.delta_e00)} mit der Einstellung Tageslicht, ${shown(without.balanced.delta_e00)} nach dem Weißabgleich, ${shown(without.finished.delta_e00)} ${finished[finish]}.`,
      `Mit Filter: ${shown(filtered.daylight.delta_e00)}, ${shown(filtered.balanced.delta_e00)} und ${shown(filtered.finished.delta_e00)}.`,
    ].join(" "),
};

export const pictures: PictureTexts = {
  caution:
    "Hier geht es um Licht und Farbe. Über den Tauchgang entscheiden deine Ausbildung und die örtlichen Regeln.",
  chart_under_water: chartUnderWater,
  colour_strip: colourStrip,
  exposure_budget: exposureBudget,
  filter_map: filterMap,
  light_with_depth: lightWithDepth,
  mixed_light_map: mixedLightMap,
  red_in_post: redInPost,
  slate,
  cutting_template: cuttingTemplate,
  grade,
};
