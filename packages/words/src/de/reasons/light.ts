import type { LightReasons, Overhead } from "@sunfathom/planner";
import { type Compass, pointOf } from "../../numbers/compass.js";
import type { Texts } from "../../problems/texts.js";
import { depth, shown, stops, wholeStops } from "../format.js";

/** Gründe zum Licht selbst, die mehrere Antworten geben. */
export const lightReasons: Texts<LightReasons, string> = {
  cct_without_meaning: (p, u) =>
    `Ab ${depth(p.depth_m, u)} ist das Licht so farbig, dass sich keine Farbtemperatur in Kelvin mehr angeben lässt. Kein fester Kelvinwert passt dazu; eine Karte schon, so weit die Kamera reicht.`,
  cct_beyond_locus: (p, u) =>
    `Ab ${depth(p.depth_m, u)} ist das Licht blauer als jeder glühende Körper: Es hat keine Farbtemperatur in Kelvin. Kein fester Kelvinwert passt dazu; eine Karte schon, so weit die Kamera reicht.`,
  red_not_only_transmitted: (p, u) =>
    `Unterhalb von etwa ${depth(p.depth_m, u)} entsteht das letzte Rot zum größten Teil im Wasser selbst, durch inelastische Streuung und Fluoreszenz. Dieses Modell zählt nur Rot von der Oberfläche: Seine Werte für Rot sind dort zu niedrig.`,
  sun_stands: (p) =>
    `${p.local ? `Um ${p.local.time.slice(11)} Uhr Ortszeit` : `Am ${utc(p.time)}`} steht die Sonne dort ${shown(p.elevation_deg)} Grad über dem Horizont, im ${pointOf(COMPASS, p.azimuth_deg)}.`,
  cloud_fills_shadow: (p) =>
    `Wolken geben dem Motiv ${stops(p.stops)} mehr Licht als ein klarer Himmel: Sie hellen die Seite auf, die die Sonne im Schatten lässt.`,
  clock_shows_twice: (p) =>
    `Die Uhren zeigen diese Ortszeit an dem Tag zweimal; hier gilt die erste, ${utc(p.time)}.`,
  overhead_cuts: (p) =>
    `${COVERS[p.overhead]} ${wholeStops(p.stops)} Tageslicht, verglichen mit Freiwasser in derselben Tiefe.`,
  night_there: () =>
    "An diesem Ort ist zu dieser Zeit Nacht: Es gibt kein Tageslicht, nur das Licht deiner Videolampen.",
};

const COVERS: Readonly<Record<Overhead, string>> = {
  none: "Freiwasser kostet hier",
  overhang: "Der Überhang kostet hier etwa",
  cavern: "Die Grotte kostet hier etwa",
  cave: "Die Höhle kostet hier",
  wreck: "Das Wrack um dich kostet hier etwa",
  ice: "Eis und Schnee kosten hier etwa",
};

const COMPASS: Compass<string> = [
  "Norden",
  "Nordosten",
  "Osten",
  "Südosten",
  "Süden",
  "Südwesten",
  "Westen",
  "Nordwesten",
];

/** Ein Zeitpunkt, auf die Minute. */
const utc = (time: string): string =>
  `${time.slice(8, 10)}.${time.slice(5, 7)}.${time.slice(0, 4)} um ${time.slice(11, 16)} UTC`;
