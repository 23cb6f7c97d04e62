import { fr } from "../cldr/fr.js";
import { brightnessOf } from "../numbers/brightness.js";
import { formatsOf } from "../numbers/formats.js";
import { lengthsOf } from "../numbers/lengths.js";
import { roughly } from "../numbers/roughly.js";
import { thirdsOf } from "../numbers/thirds.js";
import type { TextUnits } from "../problems/texts.js";

const formats = formatsOf(fr);
export const { shown, grouped, percent, spoken, either, plural, unit } = formats;
const { withUnit, ...lengths } = lengthsOf(formats);
export const { depth, depthNumber, distance, near } = lengths;

/** Une profondeur ou une plage de profondeurs au fil d’une phrase : « à 12 m », « entre 5 et 18 m ». */
export function between(min_m: number, max_m: number, units?: TextUnits): string {
  const [from, to] = [depthNumber(min_m, units), depthNumber(max_m, units)];
  return from === to ? `à ${withUnit(from, units)}` : `entre ${from} et ${withUnit(to, units)}`;
}

/** « de 5 à 18 m » */
export const fromTo = (from_m: number, to_m: number, units?: TextUnits): string =>
  `de ${depthNumber(from_m, units)} à ${depth(to_m, units)}`;

/** « 7, 9 et 12 m » */
export const depths = (all: readonly number[], units?: TextUnits): string =>
  withUnit(spoken([...new Set(all.map((depth_m) => depthNumber(depth_m, units)))]), units);

/** « une fois », « deux fois », « 3 fois » */
export const howOften = (count: number): string =>
  count === 1 ? "une fois" : count === 2 ? "deux fois" : `${shown(count)} fois`;

export const kelvin = (cct_K: number): string => `${shown(Math.round(cct_K / 100) * 100)} K`;

export const lumens = (flux_lm: number): string => `${grouped(Number(flux_lm.toPrecision(2)))} lm`;

/** « ⅔ IL », « 2⅓ IL » : l’unité qu’affichent les appareils, invariable. */
export function stops(value: number): string {
  const { text, none } = thirdsOf(value);
  return none ? "moins de ⅓ IL" : `${text} IL`;
}

/** Des crans de ce qui n’est qu’estimé, en entiers. */
export const wholeStops = (value: number): string => stops(Math.max(1, Math.round(value)));

/** Ce qu’une lumière a de rouge en plus ou en moins face à une autre, après une virgule. */
export const redder = (value: number): string =>
  Math.abs(value) < 1 / 6
    ? "sans plus de rouge que le reste"
    : `avec ${stops(Math.abs(value))} de ${value > 0 ? "rouge" : "vert"} en trop par rapport au reste`;

export const densityOf = (density: number): string =>
  shown(density, Math.round(density * 100) % 10 === 0 ? 1 : 2);

/** Un filtre neutre, avec sa valeur en IL. */
export const neutral = (density: number): string =>
  `un filtre ND de densité ${shown(density, 1)} (${stops(density * Math.log2(10))})`;

/** Un nombre tel qu’il a été donné, avec une virgule. */
export const asGiven = (value: number): string => String(value).replace(".", ",");

/** L’éclat d’une chose face à une autre : « 60 % », « 13 fois ». */
function brightness(value: number): string {
  const { none, times, count } = brightnessOf(value);
  if (none) return `moins de ${percent(1)}`;
  return times ? `${grouped(count)} fois` : percent(count);
}

/** D’un éclat à un autre : « de 60 % à 3 fois », « de 3 à 10 000 fois ». */
export const brightnessRange = (low: number, high: number): string =>
  `de ${brightnessOf(low).times ? grouped(brightnessOf(low).count) : brightness(low)} à ${brightness(high)}`;

/** La même, devant ce qui brille : « 60 % de la luminosité », « 13 fois la luminosité ». */
export const partOfBrightness = (value: number): string =>
  `${brightness(value)} ${brightnessOf(value).times ? "la" : "de la"} luminosité`;

/** Ce que vaut un écart de couleur, au féminin : pour une erreur ou une dominante. Mêmes bornes qu’en anglais. */
export const strength = (delta_e00: number): "légère" | "nette" | "forte" =>
  delta_e00 < 5 ? "légère" : delta_e00 < 12 ? "nette" : "forte";

export const castOf = (delta_e00: number): string => `une dominante ${strength(delta_e00)}`;

/** De combien baisse une erreur de couleur, après ce qui la fait baisser. */
export function errorFall(from: number, to: number): string {
  if (strength(from) !== strength(to))
    return `ramène l’erreur de couleur de ${strength(from)} à ${strength(to)}`;
  const share = roughly((100 * (from - to)) / from);
  return `réduit l’erreur de couleur ${share > 0 ? `d’environ ${percent(share)}` : "un peu"} (elle reste ${strength(to)})`;
}

/** Une part qui se dit « presque rien », et veut un « ne » devant son verbe. */
export const hardlyAny = (value: number): boolean => roughly(value) === 0;

/** Une part : « environ 10 % ». */
export function shareOf(value: number): string {
  const rounded = roughly(value);
  return rounded > 0 ? `environ ${percent(rounded)}` : "presque rien";
}

/** Après une dominante d’une lumière par rapport à l’autre. */
export const tooRed = (red_excess: number): string =>
  Math.abs(red_excess) < 1 / 6 ? "" : red_excess > 0 ? " (trop rouge)" : " (trop verte)";

export const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** Après un deux-points, une minuscule ; la première solution ouvre sa propre phrase. */
export const small = (text: string, index = 1): string =>
  index === 0 ? text : text.charAt(0).toLowerCase() + text.slice(1);
