import type { WaysOut } from "@sunfathom/planner";
import type { Texts } from "../problems/texts.js";
import { kindName } from "./filter-name.js";
import { distance, shown, stops } from "./format.js";

/** Auswege, wo Videolampen und Tageslicht sich beißen. */
export const waysOut: Texts<WaysOut, string> = {
  lamps_off: (p) =>
    `Schalte die Videolampen aus, lass sie am Rig und mach den Weißabgleich im Tageslicht. Das kostet am Motiv ${stops(p.cost_stops)}.`,
  lamp_filter: (p) =>
    `Setz vor dem Tauchgang auf jede Videolampe einen ${kindName(p.kind)} etwa der Dichte ${shown(p.density, 1)}: Er gleicht sie ans Tageslicht hier an${p.is_seen ? ", lässt aber noch einen sichtbaren Farbstich" : ""}. Mach den Weißabgleich im Tageslicht.`,
  balance_to_lamps: () =>
    "Mach den Weißabgleich auf eine Karte im Licht der Videolampen: Dann stimmen die Farben am Motiv, und alles, was nur das Tageslicht erreicht, nimmt die Farbe des Wassers an.",
  balance_to_both: () =>
    "Lass die Videolampen an und mach den Weißabgleich auf eine Karte am Motiv, in beidem Licht: Dann stimmen die Farben am Motiv, und alles, was nur das Tageslicht erreicht, nimmt die Farbe des Wassers an.",
  come_closer: (p, u) =>
    `Geh mit den Videolampen bis auf ${distance(p.distance_m, u)} ans Motiv heran, sicher austariert, und mach den Weißabgleich auf eine Karte in ihrem Licht: Ab da sind sie heller als das Tageslicht.`,
};
