import type { CircumstanceReasons } from "@sunfathom/planner";
import type { Texts } from "../../problems/texts.js";
import { depth, shown, wholeStops } from "../format.js";

/** Was Licht, Ort und Kamera eines Tauchgangs neben dem Plan verlangen. */
export const circumstanceReasons: Texts<CircumstanceReasons, string> = {
  dense_for_balance: (p, u) =>
    `So dicht ist der Filter für den Weißabgleich: Mit ihm wird eine Karte bis etwa ${depth(p.with_m, u)} neutral, ohne ihn ${p.without ? `nur bis ${depth(p.without.to_m, u)}` : "nirgends"}.`,
  mouth_is_brighter: (p) =>
    `Zum Ausgang hin ist das Wasser etwa ${wholeStops(p.stops)} heller: Für Blau im schwarzen Rahmen belichte darauf.${p.lamps ? ` Weiter drinnen, bei mehr als ${wholeStops(p.lamps.spare_stops)} weniger Licht, film ohne Filter mit den Videolampen.` : ""}`,
  subject_against_light: (p) =>
    `Gegen die Sonne ist das Bild etwa ${wholeStops(p.stops)} heller als das Motiv. Für eine Silhouette blende um so viel ab: Filter und Weißabgleich sind dann fast gleichgültig.`,
  low_sun_moves: (p) =>
    `Bei ${shown(p.elevation_deg)} Grad Sonnenhöhe ändert sich das Licht schnell: Belichtung und Weißabgleich alle zehn Minuten neu.`,
  cloud_lights_evenly: () =>
    "Unter dichten Wolken ist die Richtung fast gleichgültig, und die Bilder werden flach. Bricht die Sonne durch: Belichtung und Weißabgleich neu.",
  weed_tints: () => "Bewuchs schluckt Licht und färbt den Rest: darunter Belichtung und Weißabgleich neu.",
  blue_is_missing: () =>
    "In diesem Wasser fehlt Blau, mehr als Rot, und kein Filter bringt welches. Dieser hält Grün zurück, damit die Kamera beides anheben kann.",
  automatic_colours: (p) =>
    `Automatische Farben brauchen wenig Wasser im Bild: Geh nah heran${p.sun_behind ? ", die Sonne im Rücken" : ""}. Setz in der Bearbeitung den Weißpunkt auf hellen Sand, eine Tafel oder eine Flasche.`,
};
