import type { GradeTexts } from "../grade-texts.js";
import { filterName } from "./filter-name.js";
import { between, depth, percent, shown, strength } from "./format.js";

const curves = {
  rec709: "ITU-R BT.709",
  hlg: `HLG nach ITU-R BT.2100, Weiß bei ${percent(75)}`,
  log: "eine logarithmische Kurve über 13 Blendenstufen",
  linear: "eine lineare Aufnahme",
};

export const grade: GradeTexts = {
  name: ({ depth_m, filter }, u) => `Erste Korrektur für ${depth(depth_m, u)}, ${filterName(filter, "wer")}`,
  does: ({ finish, without_delta_e00, delta_e00 }) =>
    `${finish === "matched" ? "Nach einer Farbkarte angeglichen" : "Schwarzwert, Belichtung, Abgleich und Sättigung"}: bringt den Farbfehler von ${shown(without_delta_e00)} (${strength(without_delta_e00)}) auf ${shown(delta_e00)} (${strength(delta_e00)}). Es ist ein Anfang: Mach nach Augenmaß weiter.`,
  holds: ({ min_depth_m, max_depth_m }, u) =>
    `Sie gilt für Aufnahmen ${between(min_depth_m, max_depth_m, u)}, mit demselben Filter, falls einer drauf war, und mit der Belichtung und dem Weißabgleich dieser Tiefe.`,
  red: {
    excellent: "Rot ist hier gut aufgenommen. Rot, das nicht aufgenommen wurde, bleibt verloren.",
    acceptable:
      "Rot ist hier mit etwas Rauschen aufgenommen. Rot, das nicht aufgenommen wurde, bleibt verloren.",
    poor: "Hier ist wenig Rot aufgenommen: Diese Korrektur hebt auch sein Rauschen an. Rot, das nicht aufgenommen wurde, bleibt verloren.",
    gone: "Hier ist kein Rot aufgenommen. Es bleibt verloren: Keine Korrektur holt es zurück.",
  },
  input: ({ finish, curve }) =>
    `${finish === "matched" ? "Kanäle der Kamera nach ihrem Weißabgleich, ohne ihre eigene Farbmatrix" : "Das eigene Bild der Kamera, Primärfarben von ITU-R BT.709"}; Codewerte 0 bis 1, voller Umfang, für ${typeof curve === "string" ? curves[curve] : "die mitgeschickte Kurve"}.`,
  output:
    "sRGB nach IEC 61966-2-1, Codewerte 0 bis 1; was darüber hinausgeht, ist eine Farbe, die ein Bildschirm nicht zeigen kann.",
  linear:
    "Lineares Licht, Primärfarben von ITU-R BT.709, 0 bis 1: vorher die Aufnahme dekodieren, danach für den Bildschirm kodieren.",
  convert: "Dein Schnittprogramm braucht sie vielleicht in einer anderen Form.",
};
