import type { WaysOut } from "@sunfathom/planner";
import type { Texts } from "../problems/texts.js";
import { kindName } from "./filter-name.js";
import { densityOf, distance, percent, stops } from "./format.js";

/** Auswege, wo Videolampen und Tageslicht sich beißen. */
export const waysOut: Texts<WaysOut, string> = {
  lamps_off: (p) =>
    `Schalte die Videolampen aus, lass sie am Rig und mach den Weißabgleich im Tageslicht. Das kostet am Motiv ${stops(p.cost_stops)}.`,
  lamp_filter: (p) =>
    `Setz auf jede Videolampe einen Filter, der sie ans Tageslicht hier angleicht: Er muss ${percent(p.red * 100)} Rot, ${percent(p.green * 100)} Grün und ${percent(p.blue * 100)} Blau durchlassen. Am nächsten kommt ein einfacher ${kindName(p.kind)} der Dichte ${densityOf(p.density)}${p.is_seen ? ", der noch einen sichtbaren Farbstich lässt" : ""}. Mach den Weißabgleich im Tageslicht.`,
  balance_to_lamps: () =>
    "Mach den Weißabgleich auf eine Karte im Licht der Videolampen: Dann stimmen die Farben am Motiv, und alles, was nur das Tageslicht erreicht, nimmt die Farbe des Wassers an.",
  come_closer: (p, u) =>
    `Geh mit den Videolampen bis auf ${distance(p.distance_m, u)} ans Motiv heran, sicher austariert, und mach den Weißabgleich auf eine Karte in ihrem Licht: Ab da sind sie heller als das Tageslicht.`,
};
