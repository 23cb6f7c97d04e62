import type { RedInPostTexts } from "../picture-texts.js";
import { dialShutter, settings } from "./dial.js";
import { filterName, theFilter } from "./filter-name.js";
import { capital, depth, neutral, shown, stops } from "./format.js";

/** Cuántas veces: la décima solo cuenta por debajo de 3. */
const times = (count: number): string =>
  `${shown(count, count < 2.95 && Math.round(10 * count) % 10 > 0 ? 1 : 0)} veces`;

const quality: RedInPostTexts["quality"] = {
  excellent: "Limpio",
  acceptable: "Con grano",
  poor: "Con mucho grano",
  gone: "Ruido, nada de rojo",
};
const clipped = "El blanco se quema";
const without = "Sin filtro";
const setFor = (whose: "no_filter" | "filter"): string =>
  `ajustes para la imagen ${whose === "filter" ? "con el" : "sin"} filtro`;

const exposed: (p: { off_by_stops: number }) => string = ({ off_by_stops }) =>
  Math.abs(off_by_stops) < 1 / 6
    ? "bien expuesta"
    : `${stops(Math.abs(off_by_stops))} demasiado ${off_by_stops < 0 ? "oscura" : "clara"}`;
const signal: (p: { red_signal_to_noise: number }) => string = ({ red_signal_to_noise }) =>
  red_signal_to_noise < 0.95
    ? "el rojo es más débil que su ruido"
    : red_signal_to_noise < 1.05
      ? "el rojo es tan fuerte como su ruido"
      : `el rojo es ${times(red_signal_to_noise)} su ruido`;

export const redInPost: RedInPostTexts = {
  headline: ({ verdict, cleaner_by, depth_m }, u) =>
    ({
      gone: `A ${depth(depth_m, u)} no hay rojo que recuperar después`,
      clean_without: `A ${depth(depth_m, u)}, el rojo se puede recuperar después`,
      cleaner_through_filter: `A ${depth(depth_m, u)}, el rojo añadido después tiene ${times(cleaner_by)} más ruido`,
      alike: `A ${depth(depth_m, u)}, un filtro no deja el rojo más limpio`,
    })[verdict],
  why: {
    gone: "El agua se llevó el rojo antes de que la cámara pudiera registrarlo. Forzarlo solo sube el ruido, con filtro o sin él.",
    clean_without:
      "Aquí la luz tiene bastante rojo. Aunque se fuerce después, queda limpio; un filtro cuesta luz y aporta poco.",
    cleaner_through_filter:
      "Al forzar el rojo después, sube también su ruido. Un filtro, en cambio, frena el verde y el azul: puede exponer con más luz, y al rojo le toca más de ella.",
    alike:
      "A través del filtro, el rojo apenas se registra mejor. Con él o sin él, forzarlo sube también el ruido.",
  },
  truth: "Tal como es",
  reading:
    "Arriba, un campo rojo; abajo, una tarjeta blanca; hacia la derecha, la luz baja 3 pasos. Cada imagen de abajo está forzada hasta que este rojo y este blanco son correctos. Fíjese en el grano, en los escalones y en el blanco.",
  settings_for: ({ settings_for, settings: set, neutral_density }) =>
    `${capital(setFor(settings_for))}: ${settings(set)}, ${dialShutter(set.shutter_s)}${neutral_density === undefined ? "" : `, con ${neutral(neutral_density)}`}`,
  without,
  filtered: ({ filter, is_advised }) => `Con ${theFilter(filter)}${is_advised ? "" : ", aquí no aconsejado"}`,
  quality,
  clipped,
  caption: (way) =>
    `${capital(exposed(way))}${way.is_clipped ? "" : `; ${signal(way)}, en ${shown(way.red_steps)} escalones de luz`}`,
  squares: ({ bits }) =>
    `Cada cuadro es un píxel tal como se mira, ampliado. El ruido se dibuja al azar, con la fuerza calculada; los escalones son los de una grabación de ${bits} bits.`,
  description: ({ depth_m, filter, ways }, u) =>
    [
      `Un campo rojo y una tarjeta blanca a ${depth(depth_m, u)}, registrados de cuatro maneras y forzados hasta que el rojo y el blanco son correctos.`,
      ...ways.map((way) => {
        const name = way.filtered ? capital(filterName(filter)) : without;
        return `${name}, ${setFor(way.settings_for)}: ${exposed(way)}; ${way.is_clipped ? clipped.toLowerCase() : signal(way)}.`;
      }),
    ].join(" "),
};
