import type { LightReasons, Overhead } from "@sunfathom/planner";
import { type Compass, pointOf } from "../../numbers/compass.js";
import type { Texts } from "../../problems/texts.js";
import { depth, shown, stops, wholeStops } from "../format.js";

/** Ce qu’il y a à dire de la lumière elle-même, dans plusieurs réponses. */
export const lightReasons: Texts<LightReasons, string> = {
  cct_without_meaning: (p, u) =>
    `À partir de ${depth(p.depth_m, u)}, la lumière est trop loin de tout blanc pour avoir une température de couleur en kelvins. Aucun réglage en kelvins ne convient ; une charte, oui, dans les limites de l’appareil.`,
  cct_beyond_locus: (p, u) =>
    `À partir de ${depth(p.depth_m, u)}, la lumière est plus bleue que tout corps incandescent : elle n’a pas de température de couleur en kelvins. Aucun réglage en kelvins ne convient ; une charte, oui, dans les limites de l’appareil.`,
  red_not_only_transmitted: (p, u) =>
    `Au-delà de ${depth(p.depth_m, u)} environ, l’essentiel du peu de rouge qui reste se forme dans l’eau même, par diffusion inélastique et fluorescence. Ce modèle ne compte que le rouge venu de la surface : ne vous fiez pas à ses valeurs de rouge à ces profondeurs, elles sont trop basses.`,
  sun_stands: (p) =>
    `${p.local ? `À ${p.local.time.slice(11, 13)} h ${p.local.time.slice(14, 16)}, heure locale` : `Le ${utc(p.time)}`}, le soleil est là-bas à ${shown(p.elevation_deg)} degrés au-dessus de l’horizon, ${pointOf(COMPASS, p.azimuth_deg)}.`,
  cloud_fills_shadow: (p) =>
    `Les nuages donnent au sujet ${stops(p.stops)} de lumière de plus qu’un ciel dégagé : ils éclairent le côté que le soleil laisse dans l’ombre.`,
  clock_shows_twice: (p) =>
    `Ce jour-là, les horloges affichent deux fois cette heure locale ; cette réponse prend la première, le ${utc(p.time)}.`,
  overhead_cuts: (p) =>
    `${COVERS[p.overhead]} ${wholeStops(p.stops)} de lumière du jour, par rapport à la pleine eau à la même profondeur.`,
  night_there: () =>
    "Il fait nuit à cet endroit et à cette heure : il n’y a pas de lumière du jour, et vos phares vidéo sont la seule lumière.",
};

const COVERS: Readonly<Record<Overhead, string>> = {
  none: "La pleine eau coûte ici",
  overhang: "Le surplomb coûte ici environ",
  cavern: "La caverne coûte ici environ",
  cave: "La grotte coûte ici",
  wreck: "L’épave qui vous entoure coûte ici environ",
  ice: "La glace et la neige coûtent ici environ",
};

const COMPASS: Compass<string> = [
  "au nord",
  "au nord-est",
  "à l’est",
  "au sud-est",
  "au sud",
  "au sud-ouest",
  "à l’ouest",
  "au nord-ouest",
];

/** Un instant, à la minute près. */
const utc = (time: string): string =>
  `${time.slice(8, 10)}/${time.slice(5, 7)}/${time.slice(0, 4)} à ${time.slice(11, 13)} h ${time.slice(14, 16)} UTC`;
