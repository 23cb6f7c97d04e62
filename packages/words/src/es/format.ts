import { es } from "../cldr/es.js";
import { brightnessOf } from "../numbers/brightness.js";
import { formatsOf } from "../numbers/formats.js";
import { lengthsOf } from "../numbers/lengths.js";
import { roughly } from "../numbers/roughly.js";
import { thirdsOf } from "../numbers/thirds.js";
import type { TextUnits } from "../problems/texts.js";

const formats = formatsOf(es);
export const { shown, grouped, percent, plural, unit } = formats;
const { withUnit, ...lengths } = lengthsOf(formats);
export const { depth, depthNumber, distance, near } = lengths;

/** «y» pasa a «e» ante el sonido i, y «o» a «u» ante el sonido o: «rojo e intenso», «7 u 8 m». */
export const spoken = (all: readonly string[]): string =>
  /^h?i(?!e)/i.test(all[all.length - 1] ?? "")
    ? formats.spoken(all).replace(/ y (?=\S*$)/, " e ")
    : formats.spoken(all);
export const either = (all: readonly string[]): string =>
  /^(h?o|8|11(?!\d))/i.test(all[all.length - 1] ?? "")
    ? formats.either(all).replace(/ o (?=\S*$)/, " u ")
    : formats.either(all);

/** Una profundidad o un intervalo dentro de la frase: «a 12 m», «entre 5 y 18 m». */
export function between(min_m: number, max_m: number, units?: TextUnits): string {
  const [from, to] = [depthNumber(min_m, units), depthNumber(max_m, units)];
  return from === to ? `a ${withUnit(from, units)}` : `entre ${from} y ${withUnit(to, units)}`;
}

/** «de 5 a 18 m» */
export const fromTo = (from_m: number, to_m: number, units?: TextUnits): string =>
  `de ${depthNumber(from_m, units)} a ${depth(to_m, units)}`;

/** «7, 9 y 12 m» */
export const depths = (all: readonly number[], units?: TextUnits): string =>
  withUnit(spoken([...new Set(all.map((depth_m) => depthNumber(depth_m, units)))]), units);

/** «una vez», «dos veces», «3 veces» */
export const howOften = (count: number): string =>
  count === 1 ? "una vez" : count === 2 ? "dos veces" : `${shown(count)} veces`;

export const kelvin = (cct_K: number): string => `${shown(Math.round(cct_K / 100) * 100)} K`;

export const lumens = (flux_lm: number): string => `${grouped(Number(flux_lm.toPrecision(2)))} lm`;

/** «⅔ de paso», «1 paso», «2⅓ pasos» */
export function stops(value: number): string {
  const { text, one, none } = thirdsOf(value);
  if (none) return "menos de ⅓ de paso";
  if (!one) return `${text} pasos`;
  return text === "1" ? "1 paso" : `${text} de paso`;
}

/** Pasos de algo que solo se estima, en enteros. */
export const wholeStops = (value: number): string => stops(Math.max(1, Math.round(value)));

/** Cuánto más rojo, o más verde, es lo que iluminan los focos. */
export const redder = (value: number): string =>
  Math.abs(value) < 1 / 6
    ? "que no es más roja que el resto"
    : `con ${stops(Math.abs(value))} de ${value > 0 ? "rojo" : "verde"} de más frente al resto`;

export const densityOf = (density: number): string =>
  shown(density, Math.round(density * 100) % 10 === 0 ? 1 : 2);

/** Un filtro de densidad neutra, con lo que cuesta en pasos. */
export const neutral = (density: number): string =>
  `un filtro ND de densidad ${shown(density, 1)} (${stops(density * Math.log2(10))})`;

/** Un número tal como se indicó, con coma. */
export const asGiven = (value: number): string => String(value).replace(".", ",");

const brightnessIn =
  (article: string) =>
  (value: number): string => {
    const { none, times, count } = brightnessOf(value);
    if (none) return `menos del ${percent(1)}`;
    return times ? `${count} veces` : `${article}${percent(count)}`;
  };

/** Cuánto brilla una cosa frente a otra: «60 %», «13 veces». */
export const brightness = brightnessIn("");

/** Lo mismo, ante lo que brilla: «más o menos un 60 % del brillo», «menos del 1 % del brillo». */
export const partOfBrightness = (value: number): string => {
  const { none, times } = brightnessOf(value);
  const about = none ? "" : "más o menos ";
  return `${about}${times ? `${brightness(value)} el brillo` : `${brightnessIn("un ")(value)} del brillo`}`;
};

/** Lo fuerte que es un error de color; los límites son los del inglés. */
export const strength = (delta_e00: number): "leve" | "notable" | "fuerte" =>
  delta_e00 < 5 ? "leve" : delta_e00 < 12 ? "notable" : "fuerte";

export const castOf = (delta_e00: number): string => `una dominante ${strength(delta_e00)}`;

/** Cuánto baja un error de color, detrás de lo que lo baja. */
export function errorFall(from: number, to: number): string {
  if (strength(from) !== strength(to))
    return `reduce el error de color de ${strength(from)} a ${strength(to)}`;
  const share = roughly((100 * (from - to)) / from);
  return `reduce el error de color ${share > 0 ? `más o menos un ${percent(share)}` : "un poco"} (sigue siendo ${strength(to)})`;
}

/** Una parte: «más o menos un 10 %». */
export function shareOf(value: number): string {
  const rounded = roughly(value);
  return rounded > 0 ? `más o menos un ${percent(rounded)}` : "casi nada";
}

/** Tras una dominante de una luz frente a la otra. */
export const tooRed = (red_excess: number): string =>
  Math.abs(red_excess) < 1 / 6 ? "" : red_excess > 0 ? " (demasiado roja)" : " (demasiado verde)";

export const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** Detrás de dos puntos. */
export const small = (text: string): string => text.charAt(0).toLowerCase() + text.slice(1);
