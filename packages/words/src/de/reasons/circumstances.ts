import type { CircumstanceReasons } from "@sunfathom/planner";
import type { Texts } from "../../problems/texts.js";
import { depth, shown, wholeStops } from "../format.js";

/** Was Licht, Ort und Kamera eines Tauchgangs neben dem Plan verlangen. */
export const circumstanceReasons: Texts<CircumstanceReasons, string> = {
  dense_for_balance: (p, u) =>
    `So dicht muss der Filter sein, weil der Weißabgleich der Kamera Grenzen hat: Mit ihm wird eine Karte bis etwa ${depth(p.with_m, u)} neutral, ohne ihn ${p.without ? `nur bis ${depth(p.without.to_m, u)}` : "bei diesem Tauchgang nirgends"}. Ein schwächerer spart Licht und lässt mehr Farbstich übrig, zuerst in der Tiefe.`,
  mouth_is_brighter: (p) =>
    `Zum Ausgang hin ist das Wasser draußen etwa ${wholeStops(p.stops)} heller als das, was du drinnen filmst. Für einen blauen Ausgang mit dunklem Fels ringsum belichte aufs Wasser und lass den Rest schwarz werden.${p.lamps ? ` Für einen Tauchgang weiter drinnen, wo es um mehr als ${wholeStops(p.lamps.spare_stops)} dunkler ist, lass den Filter an Land und filme mit den Videolampen.` : ""}`,
  filter_beside_lights: () =>
    "Deine Videolampen sind hier nicht heller als das Tageslicht: Sie bringen Rot, und der Filter hält zurück, wovon das Tageslicht zu viel bringt, Blau und Grün. Wo sie heller sind, aus der Nähe, würdest du ohne Filter filmen.",
  subject_against_light: (p) =>
    `Gegen die Sonne ist das ganze Bild etwa ${wholeStops(p.stops)} heller als ein graues Motiv. Dieser Plan zeigt das Motiv in Farbe, und das Wasser dahinter wird blass. Für eine Silhouette blende um so viel aufs Wasser ab; Weißabgleich und Filter sind dann fast gleichgültig.`,
  low_sun_moves: (p) =>
    `Bei ${shown(p.elevation_deg)} Grad Sonnenhöhe ändert sich das Licht schnell, auch in derselben Tiefe. Stell Belichtung und Weißabgleich alle zehn Minuten neu ein.`,
  cloud_lights_evenly: () =>
    "Unter geschlossener Wolkendecke kommt das Licht gleichmäßig von oben: Wohin du filmst, ist fast gleichgültig, und die Bilder werden flach. Bricht die Sonne durch, stell Belichtung und Weißabgleich neu ein.",
  weed_tints: () =>
    "Bewuchs schluckt Licht und färbt, was davon übrig bleibt: Stell darunter Belichtung und Weißabgleich neu ein, und such Lücken, durch die das Licht fällt.",
  blue_is_missing: (p, u) =>
    `In diesem Wasser fehlt Blau, mehr als Rot: In ${depth(p.depth_m, u)} bekommt die Kamera davon am wenigsten. Kein Filter bringt welches dazu. Dieser hält Grün zurück, damit die Kamera Blau wie Rot anheben kann.`,
  automatic_colours: (p) =>
    `Automatische Farben gelingen am besten mit wenig Wasser im Bild: Geh nah heran${p.sun_behind ? ", halte die Sonne im Rücken" : ""} und füll das Bild mit dem Motiv. Setz in der Bearbeitung den Weißpunkt auf etwas, das unten grau oder weiß war: heller Sand, eine Tafel, eine Flasche.`,
};
