import type { WhiteBalanceReasons } from "@sunfathom/planner";
import type { Texts } from "../../problems/texts.js";
import { aCast, castOf, depth, distance, howOften, kelvin, shown, stops, strength } from "../format.js";

/** Was eine Karte stattdessen hinterließe: wo die Kamera am Ende ist, dasselbe. */
const onCard = (p: { cast: number; card_cast: number }): string => {
  if (shown(p.cast, 1) === shown(p.card_cast, 1))
    return "Eine Karte würde nicht helfen: Der Weißabgleich ist an seiner Grenze";
  return p.card_cast < 1
    ? "Eine Karte dort würde ihn herausnehmen"
    : `Eine Karte dort würde einen ${strength(p.card_cast)}en übrig lassen`;
};

/** Gründe zum Weißabgleich. */
export const whiteBalanceReasons: Texts<WhiteBalanceReasons, string> = {
  kelvin_leaves_the_water: (p, u) =>
    `Auf ${kelvin(p.cct_K)} gestellt, den Wert der Videolampen, ließe die Kamera ${castOf(p.left)} stehen, den ${distance(p.path_m, u)} Wasser zwischen Lampe, Motiv und Kamera verursachen. Ein Weißabgleich auf eine Karte im Arbeitsabstand nimmt ihn heraus.`,
  balance_again: (p, u) =>
    `Das Licht ändert sich mit der Tiefe. Auf dem Weg nach unten entsteht ${howOften(p.times)} ${aCast(p.tolerance)}, zuerst in ${depth(p.first_m, u)}: Mach dann jeweils einen neuen Weißabgleich.`,
  one_balance_serves: () => "Ein Weißabgleich reicht für den ganzen Bereich: Ein neuer brächte wenig.",
  kelvin_balance_leaves: (p, u) =>
    `Auf ${kelvin(p.cct_K)} gestellt, hinterlässt die Kamera in ${depth(p.depth_m, u)} auf Grau ${castOf(p.cast)}. ${onCard(p)}.`,
  auto_balance_leaves: (p, u) =>
    `Der automatische Weißabgleich macht das ganze Bild im Mittel grau, samt Wasser, so weit er reicht. In ${depth(p.depth_m, u)} hinterlässt das auf Grau ${castOf(p.cast)}. ${onCard(p)}.`,
  balance_in_reach: () =>
    "Der Weißabgleich der Kamera kann eine Karte im ganzen Tiefenbereich neutral stellen.",
  balance_falls_short: (p, u) =>
    `In ${depth(p.depth_m, u)} reicht der Weißabgleich der Kamera nicht ganz: Zwischen den Kanälen bleibt ein Rest von ${stops(p.short_stops)}. Das hinterlässt auf Grau ${castOf(p.cast)}: Nimm ihn in der Bearbeitung heraus.`,
};
