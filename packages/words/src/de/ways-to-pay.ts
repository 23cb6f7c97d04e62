import type { WaysToPay } from "@sunfathom/planner";
import type { Texts } from "../problems/texts.js";
import { dialFNumber, dialIso, dialShutter } from "./dial.js";
import { depth, distance, lumens, neutral, shown, stops } from "./format.js";

/** Wege, fehlendes Licht auszugleichen oder zu viel Licht loszuwerden. */
export const waysToPay: Texts<WaysToPay, string> = {
  wide_open: (p) =>
    `Öffne die Blende ganz, auf f/${dialFNumber(p.f_number)}; dann reicht ISO ${dialIso(p.iso)}.`,
  depth_of_field: (p) =>
    `Für mehr Schärfentiefe blende auf f/${dialFNumber(p.f_number)} ab und geh auf ISO ${dialIso(p.iso)} hoch.`,
  more_gain: (p) =>
    `ISO ${dialIso(p.iso)} würde reichen, mit mehr Rauschen. Du erlaubst dieser Kamera bis ISO ${dialIso(p.allowed)}.`,
  close_aperture: (p) =>
    p.enough
      ? `Blende auf f/${dialFNumber(p.f_number)} ab.`
      : `Blende auf f/${dialFNumber(p.f_number)} ab, weiter geht es nicht. Das allein reicht nicht.`,
  neutral_density: (p) => `Nimm ${neutral(p.density)}.`,
  shorter_shutter: (p) =>
    `Belichte kürzer, mit ${dialShutter(p.shutter_s)}; im Video wirken Bewegungen dann weniger flüssig.`,
  longer_shutter: (p) =>
    `Stell die Belichtungszeit auf ${dialShutter(p.shutter_s)}: Das bringt ${stops(p.gains_stops)}, aber auch mehr Bewegungsunschärfe.`,
  filter_off: (p) => `Nimm den Filter vom Objektiv: Er kostet ${stops(p.gains_stops)}.`,
  wait_for_sun: (p) =>
    `Leg den Tauchgang an dem Tag auf die Zeit, zu der die Sonne ${shown(p.elevation_deg)} Grad hoch steht, statt unter Wasser zu warten: Das bringt ${stops(p.gains_stops)}.`,
  if_sun_rises: (p) =>
    `Wenn die Sonne dort ${shown(p.elevation_deg)} Grad hoch steigt, leg den Tauchgang auf diese Zeit, statt unter Wasser zu warten: Das bringt ${stops(p.gains_stops)}.`,
  shallower: (p, u) =>
    `In ${depth(p.depth_m, u)} ist das Licht hell genug, wenn dein Tauchplan dort entlangführt.`,
  add_lamp: (p, u) =>
    `Nimm eine weiße Videolampe mit etwa ${lumens(p.flux_lm)} und ${shown(p.beam_angle_deg)} Grad Leuchtwinkel, ${distance(p.distance_m, u)} vom Motiv, und mach den Weißabgleich auf eine Karte in ihrem Licht.`,
};
