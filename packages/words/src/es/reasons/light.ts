import type { LightReasons, Overhead } from "@sunfathom/planner";
import { type Compass, pointOf } from "../../numbers/compass.js";
import type { Texts } from "../../problems/texts.js";
import { capital, depth, shown, stops, wholeStops } from "../format.js";

/** Razones sobre la luz misma, que dan varias respuestas. */
export const lightReasons: Texts<LightReasons, string> = {
  cct_without_meaning: (p, u) =>
    `A partir de ${depth(p.depth_m, u)} la luz está tan lejos de cualquier blanco que no se le puede dar una temperatura de color en kelvin. Ningún valor Kelvin fijo sirve; una tarjeta sí, hasta donde llegue la cámara.`,
  cct_beyond_locus: (p, u) =>
    `A partir de ${depth(p.depth_m, u)} la luz es más azul que cualquier cuerpo incandescente: no tiene temperatura de color en kelvin. Ningún valor Kelvin fijo sirve; una tarjeta sí, hasta donde llegue la cámara.`,
  red_not_only_transmitted: (p, u) =>
    `Por debajo de unos ${depth(p.depth_m, u)}, la mayor parte del último rojo nace en la propia agua, por dispersión inelástica y fluorescencia. Este modelo cuenta solo el rojo que llega desde la superficie, así que no se fíe ahí de sus cifras de rojo: son demasiado bajas.`,
  sun_stands: (p) =>
    `${p.local ? `${capital(atClock(p.local.time.slice(11)))}, hora local` : `El ${utc(p.time)}`}, el sol está allí a ${shown(p.elevation_deg)} grados sobre el horizonte, hacia el ${pointOf(COMPASS, p.azimuth_deg)}.`,
  cloud_fills_shadow: (p) =>
    `Las nubes le dan al motivo ${stops(p.stops)} más de luz que un cielo despejado: iluminan el lado que el sol deja en sombra.`,
  clock_shows_twice: (p) =>
    `Ese día los relojes marcan dos veces esta hora local; esta respuesta usa la primera, el ${utc(p.time)}.`,
  overhead_cuts: (p) =>
    `${COVERS[p.overhead]} ${wholeStops(p.stops)} de luz del día, en comparación con aguas abiertas a la misma profundidad.`,
  night_there: () =>
    "En ese lugar y a esa hora es de noche: no hay luz del día, y sus focos de vídeo son la única luz.",
};

const COVERS: Readonly<Record<Overhead, string>> = {
  none: "Aquí, las aguas abiertas quitan",
  overhang: "Aquí, el saliente quita más o menos",
  cavern: "Aquí, la caverna quita más o menos",
  cave: "Aquí, la cueva quita",
  wreck: "Aquí, el pecio que le rodea quita más o menos",
  ice: "Aquí, el hielo y la nieve quitan más o menos",
};

const COMPASS: Compass<string> = [
  "norte",
  "noreste",
  "este",
  "sureste",
  "sur",
  "suroeste",
  "oeste",
  "noroeste",
];

/** «a las 10:15», «a la 01:15» */
const atClock = (time: string): string => `${time.startsWith("01") ? "a la" : "a las"} ${time}`;

/** Un instante, al minuto. */
const utc = (time: string): string =>
  `${time.slice(8, 10)}/${time.slice(5, 7)}/${time.slice(0, 4)} ${atClock(time.slice(11, 16))} UTC`;
