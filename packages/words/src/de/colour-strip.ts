import type { ColourStripTexts } from "../picture-texts.js";
import { filterName } from "./filter-name.js";
import { capital, depth, depthNumber, shown, strength } from "./format.js";

export const colourStrip: ColourStripTexts = {
  headline: ({ max_depth_m }, u) => `So schwinden Farben auf dem Weg hinab bis ${depth(max_depth_m, u)}`,
  names: { grey: "Grau", red: "Rot", skin: "Haut" },
  reading:
    "Jeder Streifen reicht von der Oberfläche bis dorthin, wo du am tiefsten filmst: Grau, Rot und Haut, wie die Kamera sie aufnimmt, in jeder Tiefe neu belichtet. Der obere Rand zeigt sie bei Tageslicht.",
  daylight: "Einstellung Tageslicht",
  balanced: "Nach dem Weißabgleich",
  filtered: ({ filter, is_advised }) =>
    `Nach dem Weißabgleich, ${filterName(filter, "wer")}${is_advised ? "" : ", hier nicht empfohlen"}`,
  truth: "wahr",
  at_depth: ({ depth_m }, u) => depth(depth_m, u),
  off: ({ delta_e00 }) => `${capital(strength(delta_e00))}er Fehler, ${shown(delta_e00)}`,
  dive: ({ min_depth_m, max_depth_m }, u) =>
    depthNumber(min_depth_m, u) === depthNumber(max_depth_m, u)
      ? `Du filmst in ${depth(max_depth_m, u)}`
      : `Du filmst von ${depthNumber(min_depth_m, u)} bis ${depth(max_depth_m, u)}`,
  screen:
    "Die Fehler sind mittlere CIEDE2000 der drei Farben in der größten Tiefe, ohne Rauschen; etwa 1 gilt uns als das Kleinste, was man sieht. Farben, die ein Bildschirm nicht zeigen kann, sind auf das beschnitten, was er kann.",
  description: ({ max_depth_m, filter, daylight, balanced, filtered }, u) =>
    [
      `Drei Streifen mit Grau, Rot und Haut von der Oberfläche bis ${depth(max_depth_m, u)}, wie eine Kamera sie aufnimmt.`,
      `In ${depth(max_depth_m, u)} beträgt der Farbfehler ${shown(daylight.delta_e00)} mit der Einstellung Tageslicht, ${shown(balanced.delta_e00)} nach dem Weißabgleich und ${shown(filtered.delta_e00)}, wenn dazu ein Filter auf dem Objektiv ist: ${filterName(filter, "wer")}.`,
    ].join(" "),
};
