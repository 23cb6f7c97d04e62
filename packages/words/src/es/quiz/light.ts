/** Textos de las preguntas sobre lo que quita el agua, y en qué orden. */
import type { Band } from "../../quiz/bands.js";
import { asGiven, capital, percent, small } from "../format.js";
import { list, series } from "./common.js";

const BANDS: Readonly<Record<Band, string>> = {
  "650": "rojo (650 nm)",
  "600": "naranja (600 nm)",
  "575": "amarillo (575 nm)",
  "525": "verde (525 nm)",
  "475": "azul (475 nm)",
  "425": "violeta (425 nm)",
};
/** Tal como se puede leer una curva. */
const read = (value: number): string =>
  percent(value, value >= 10 || Number(value.toFixed(1)) % 1 === 0 ? 0 : 1);

export const light = {
  band: BANDS,
  colour: {
    "650": "Rojo",
    "600": "Naranja",
    "575": "Amarillo",
    "525": "Verde",
    "475": "Azul",
    "425": "Violeta",
  },
  channel: { red: "rojo", green: "verde", blue: "azul" },

  colour_order: {
    stem: (p: { water: string }) =>
      `La luz del día baja por ${p.water}. Ordene estos colores según desaparecen con la profundidad, el primero arriba.`,
    losses: (p: { losses: { band: string; stops: string }[] }) =>
      `Pérdida por metro: ${series(p.losses.map(({ band, stops }) => `${band}, ${stops}`))}.`,
    last: (p: { order: string[] }) =>
      `Cuanto más quita un metro, antes desaparece el color. Del primero al último: ${list(p.order)}.`,
  },
  red_left: {
    row: (p: { depth: string; red: string; green: string; blue: string }) =>
      `a ${p.depth}: rojo ${p.red}, verde ${p.green}, azul ${p.blue}`,
    stem: (p: { scene: string; rows: string[]; depth: string }) =>
      `${p.scene} Bajo la superficie, los canales de una cámara han perdido estos pasos de luz del día: ${p.rows.join("; ")}. ¿Cuánta de la luz roja de justo bajo la superficie queda a ${p.depth}?`,
    read: (p: { depth: string; stops: string }) => `A ${p.depth}, la tabla da ${p.stops} para el rojo.`,
    between: (p: { depth: string; stops: string }) =>
      `A medio camino entre las dos profundidades, el rojo ha perdido más o menos la media de las dos cifras. A ${p.depth} son ${p.stops}.`,
    last: (p: { stops: string; percent: string }) =>
      `Cada paso deja la mitad de lo que había: con ${p.stops} queda más o menos el ${p.percent}.`,
  },
  percent_to_stops: {
    stem: (p: { water: string; depth: string; percent: string; channel: string }) =>
      `A ${p.depth} en ${p.water} queda el ${p.percent} de la luz que el canal ${p.channel} de una cámara ve justo bajo la superficie. ¿Cuánto se ha perdido?`,
    factor: (p: { percent: string; factor: string }) =>
      `Que quede el ${p.percent} significa que la luz se ha dividido por un factor de 100 / ${bare(p.percent)} = ${p.factor}.`,
    last: (p: { factor: string; stops: string }) =>
      `Los pasos cuentan factores de dos: log2(${p.factor}) = ${p.stops}.`,
    behindStem: (p: { water: string; depth: string; red: string; green: string }) =>
      `A ${p.depth} en ${p.water} queda el ${p.red} de la luz que el canal rojo de una cámara ve justo bajo la superficie, y el ${p.green} de la de su canal verde. ¿Cuánto se ha quedado el rojo por detrás del verde?`,
    ratio: (p: { red: string; green: string; ratio: string }) =>
      `El verde ha conservado más luz que el rojo, por un factor de ${bare(p.green)} / ${bare(p.red)} = ${p.ratio}.`,
    behindLast: (p: { factor: string; stops: string }) =>
      `Los pasos cuentan factores de dos: log2(${p.factor}) = ${p.stops}. Eso es lo que un balance de blancos tiene que subir el rojo.`,
  },
  water_from_spectrum: {
    stem: (p: { depth: string }) =>
      `La figura muestra cuánta de la luz del día de justo bajo la superficie queda a ${p.depth}. Fíjese en el color del que más queda, y en cuánto queda de él. ¿En qué agua era?`,
    option: (p: { water: string }) => `En ${p.water}`,
    peak: (p: { nm: number; percent: string }) => `Lo que más queda está a ${p.nm} nm: el ${p.percent}.`,
    others: (p: { depth: string; each: { water: string; nm: number; percent: string }[] }) =>
      `A ${p.depth} sería ${list(p.each.map(({ water, nm, percent: share }) => `el ${share} a ${nm} nm en ${water}`))}.`,
    last: (p: { water: string }) =>
      `El agua oceánica deja sobre todo azul; la costera, verde; y cuanto más turbia es, menos deja de los dos: esta es ${p.water}.`,
  },
  spectrum_most_left: {
    stem: (p: { depth: string }) =>
      `La figura muestra cuánta de la luz del día de justo bajo la superficie queda a ${p.depth} en un agua determinada. ¿De cuál de estos colores queda el porcentaje más alto?`,
    option: (p: { band: string }) => capital(p.band),
    reading: (p: { shares: { colour: string; percent: string }[] }) =>
      `Leído en la curva: ${series(p.shares.map(({ colour, percent: share }) => `${small(colour)}, el ${share}`))}.`,
    last: (p: { colour: string }) =>
      `El color del que queda el porcentaje más alto es el ${small(p.colour)}.`,
  },
  red_reach: {
    stem: (p: { scene: string }) =>
      `${p.scene} La figura muestra cómo baja con la profundidad la luz de justo bajo la superficie. ¿A qué profundidad, más o menos, queda una décima parte de la luz naranja y roja (de 600 a 700 nm)?`,
    stopsStem: (p: { scene: string; stops: string }) =>
      `${p.scene} La figura muestra cómo baja con la profundidad la luz de justo bajo la superficie. ¿A qué profundidad, más o menos, ha perdido ${p.stops} la luz naranja y roja (de 600 a 700 nm)?`,
    share: (p: { stops: string; percent: string }) =>
      `Cada paso deja la mitad de lo que había: con ${p.stops} queda el ${p.percent} %.`,
    falls: (p: { half: string; hundredth: string }) =>
      `En la curva del naranja y el rojo queda la mitad a ${p.half} y una centésima a ${p.hundredth}.`,
    last: (p: { depth: string; percent: string }) =>
      `La curva del naranja y el rojo cruza el ${p.percent} % a unos ${p.depth}.`,
  },
  depthPicture: {
    title: "Luz que queda, según la profundidad",
    xAxis: "Profundidad, m",
    yAxis: "Luz que queda, %",
    curve: { red: "naranja y rojo", green: "verde", all: "claridad" },
    alt: (p: { curves: { name: string; shares: { m: number; percent: number }[] }[] }) =>
      `Curvas de la luz que queda, en porcentaje de la que hay justo bajo la superficie. ${p.curves
        .map(
          ({ name, shares }) =>
            `${capital(name)}: ${series(shares.map(({ m, percent: share }) => `el ${read(share)} a ${asGiven(m)} m`))}`,
        )
        .join(". ")}.`,
  },
  picture: {
    title: (p: { depth: string }) => `Luz del día que queda a ${p.depth}`,
    xAxis: "Longitud de onda, nm",
    yAxis: "Luz que queda, %",
    alt: (p: { depth: string; shares: { nm: number; percent: number }[] }) =>
      `Una curva de la luz del día que queda a ${p.depth}, en porcentaje de la que hay justo bajo la superficie: ${list(p.shares.map(({ nm, percent: share }) => `el ${read(share)} a ${nm} nm`))}.`,
  },
};

/** Un porcentaje sin su signo, para hacer cuentas. */
function bare(share: string): string {
  return share.replace(/\s%$/, "");
}
