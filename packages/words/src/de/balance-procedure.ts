import type { BalanceSteps } from "@sunfathom/planner";
import type { Texts } from "../problems/texts.js";
import { depth, depths, kelvin } from "./format.js";

/** Wie man den Weißabgleich macht, in Worten für das Briefing. */
export const balanceProcedure: Texts<BalanceSteps, string> = {
  lamps_on: () => "Schalte die Videolampen im Wasser ein, auf volle Leistung, und warte einen Moment.",
  card_in_lamp_light: () =>
    "Halte eine Grau- oder Weißkarte dorthin, wo das Motiv sein wird, zur Kamera gedreht und nur von den Videolampen beleuchtet.",
  fill_frame: () => "Füll die Bildmitte mit der Karte und mach den Weißabgleich.",
  no_kelvin_fits: () => "Ohne Karte passt zu diesen Videolampen kein fester Kelvinwert.",
  kelvin: (p) => `Ohne Karte: Stell ${kelvin(p.cct_K)} ein; das Wasser dazwischen bleibt sichtbar.`,
  keep_distance: () =>
    "Bleib bei diesem Abstand: Näher dran schluckt das Wasser weniger Rot, weiter weg mehr. Der Weißabgleich gilt nur, solange der Abstand stimmt.",
  lamps_away: () => "Schalte die Videolampen aus, oder dreh sie von der Karte weg.",
  filter_first: () =>
    "Wenn du einen Filter nimmst, bring ihn zuerst an: Die Kamera muss die Karte durch ihn sehen.",
  card_upright: () =>
    "Halte eine Grau- oder Weißkarte aufrecht vor das Motiv, aber nicht in deinen Schatten, und so gedreht wie das Motiv.",
  going_down: (p, u) => `Mach auf dem Weg nach unten einen Weißabgleich in ${depths(p.depths_m, u)}.`,
  coming_up: (p, u) => `Mach auf dem Weg nach oben einen Weißabgleich in ${depths(p.depths_m, u)}.`,
  out_of_reach: (p, u) =>
    `Ab ${depth(p.depth_m, u)} bekommt die Kamera die Karte nicht mehr ganz neutral: Nimm, was am nächsten kommt, und nimm den Rest in der Farbkorrektur heraus.`,
  leave_to_camera: () =>
    "Lass den Weißabgleich auf Automatik, und sieh dir ein Bild an, bevor du weitermachst.",
  set_kelvin: (p) => `Stell den Weißabgleich auf ${kelvin(p.cct_K)} und lass ihn dort.`,
  card_would_do_better: (p, u) =>
    `Ab ${depth(p.depth_m, u)} wäre ein Weißabgleich auf die Karte deutlich besser, wenn deine Kamera das kann.`,
  balance_near: () =>
    "Das Motiv ist nicht zu erreichen: Schwimm ihm nicht hinterher. Halte die Karte oder ihren Ersatz auf Armlänge, so gedreht wie das Motiv.",
  light_changes: () =>
    "Mach den Weißabgleich neu, wenn sich das Licht ändert: unter einer Wolke, an einer schattigen Wand, in anderem Wasser.",
};
