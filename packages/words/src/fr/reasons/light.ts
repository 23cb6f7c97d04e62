import type { LightReasons, Overhead } from "@sunfathom/planner";
import type { Texts } from "../../problems/texts.js";
import { depth, shown, stops } from "../format.js";

/** Ce qu’il y a à dire de la lumière elle-même, dans plusieurs réponses. */
export const lightReasons: Texts<LightReasons, string> = {
  cct_without_meaning: (p, u) =>
    `À partir de ${depth(p.depth_m, u)}, la lumière est trop loin de tout blanc pour avoir une température de couleur en kelvins (Duv ${shown(p.duv, 3)} ; la CIE n’en donne pas au-delà de 0,05). Faites la balance des blancs sur une charte.`,
  cct_beyond_locus: (p, u) =>
    `À partir de ${depth(p.depth_m, u)}, la lumière est plus bleue que tout corps incandescent : elle n’a pas de température de couleur en kelvins. Faites la balance des blancs sur une charte.`,
  red_not_only_transmitted: (p, u) =>
    `Au-delà de ${depth(p.depth_m, u)} environ, l’essentiel du peu de rouge qui reste se forme dans l’eau même, par diffusion inélastique et fluorescence. Ce modèle ne compte que le rouge venu de la surface : ne vous fiez pas à ses valeurs de rouge à cette profondeur, elles sont trop basses.`,
  sun_stands: (p) =>
    `Le ${utc(p.time)}, à cet endroit, le soleil est à ${shown(p.elevation_deg)} degrés au-dessus de l’horizon, dans l’azimut ${shown(p.azimuth_deg)} degrés, compté depuis le nord.`,
  cloud_fills_shadow: (p) =>
    `Les nuages donnent au sujet ${stops(p.stops)} de plus qu’un ciel dégagé : ils éclairent le côté que le soleil laisse dans l’ombre.`,
  clock_shows_twice: (p) =>
    `Ce jour-là, les horloges affichent deux fois cette heure locale ; cette réponse prend la première, le ${utc(p.time)}.`,
  overhead_cuts: (p) =>
    `${COVERS[p.overhead]} ${stops(p.stops)} de lumière du jour, par rapport à la pleine eau à la même profondeur.`,
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

/** Un instant, à la minute près. */
const utc = (time: string): string =>
  `${time.slice(8, 10)}/${time.slice(5, 7)}/${time.slice(0, 4)} à ${time.slice(11, 13)} h ${time.slice(14, 16)} UTC`;
