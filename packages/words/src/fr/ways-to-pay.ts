import type { WaysToPay } from "@sunfathom/planner";
import type { Texts } from "../problems/texts.js";
import { dialFNumber, dialIso, dialShutter } from "./dial.js";
import { depth, distance, lumens, neutral, shown, stops } from "./format.js";

/** Comment rattraper la lumière perdue, ou se débarrasser du trop-plein. */
export const waysToPay: Texts<WaysToPay, string> = {
  wide_open: (p) =>
    `Ouvrez le diaphragme à fond, à f/${dialFNumber(p.f_number)} ; ${dialIso(p.iso)} ISO suffisent alors.`,
  depth_of_field: (p) =>
    `Pour plus de profondeur de champ, fermez à f/${dialFNumber(p.f_number)} et montez à ${dialIso(p.iso)} ISO.`,
  more_gain: (p) =>
    `${dialIso(p.iso)} ISO suffiraient, avec plus de bruit. Vous autorisez cet appareil jusqu’à ${dialIso(p.allowed)} ISO.`,
  close_aperture: (p) =>
    p.enough
      ? `Fermez le diaphragme à f/${dialFNumber(p.f_number)}.`
      : `Fermez le diaphragme à f/${dialFNumber(p.f_number)}, sa plus petite ouverture. Cela seul ne suffit pas.`,
  neutral_density: (p) => `Montez ${neutral(p.density)}.`,
  shorter_shutter: (p) =>
    `Raccourcissez la pose à ${dialShutter(p.shutter_s)} ; en vidéo, les mouvements seront moins fluides.`,
  longer_shutter: (p) =>
    `Réglez le temps de pose sur ${dialShutter(p.shutter_s)} : vous gagnez ${stops(p.gains_stops)}, mais avec plus de flou de mouvement.`,
  filter_off: (p) => `Retirez le filtre de l’objectif : il coûte ${stops(p.gains_stops)}.`,
  wait_for_sun: (p) =>
    `Prévoyez la plongée pour l’heure où le soleil est à ${shown(p.elevation_deg)} degrés de hauteur ce jour-là, au lieu d’attendre sous l’eau : vous gagnez ${stops(p.gains_stops)}.`,
  if_sun_rises: (p) =>
    `Si le soleil monte là-bas à ${shown(p.elevation_deg)} degrés, prévoyez la plongée pour cette heure-là, au lieu d’attendre sous l’eau : vous gagnez ${stops(p.gains_stops)}.`,
  shallower: (p, u) => `À ${depth(p.depth_m, u)}, il y a assez de lumière, si votre plan de plongée y passe.`,
  add_lamp: (p, u) =>
    `Ajoutez un phare vidéo blanc d’environ ${lumens(p.flux_lm)}, avec un faisceau de ${shown(p.beam_angle_deg)} degrés, à ${distance(p.distance_m, u)} du sujet, et faites la balance des blancs sur une charte éclairée par lui.`,
};
