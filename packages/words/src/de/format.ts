import { de } from "../cldr/de.js";
import { brightnessOf } from "../numbers/brightness.js";
import { formatsOf } from "../numbers/formats.js";
import { lengthsOf } from "../numbers/lengths.js";
import { roughly } from "../numbers/roughly.js";
import { thirdsOf } from "../numbers/thirds.js";
import type { TextUnits } from "../problems/texts.js";

const formats = formatsOf(de);
export const { shown, grouped, percent, spoken, either, plural, unit } = formats;
const { withUnit, ...lengths } = lengthsOf(formats);
export const { depth, depthNumber, distance, near } = lengths;

/** Eine Tiefe oder ein Tiefenbereich mitten im Satz: „in 12 m“, „zwischen 5 und 18 m“. */
export function between(min_m: number, max_m: number, units?: TextUnits): string {
  const [from, to] = [depthNumber(min_m, units), depthNumber(max_m, units)];
  return from === to ? `in ${withUnit(from, units)}` : `zwischen ${from} und ${withUnit(to, units)}`;
}

/** „von 5 bis 18 m“ */
export const fromTo = (from_m: number, to_m: number, units?: TextUnits): string =>
  `von ${depthNumber(from_m, units)} bis ${depth(to_m, units)}`;

/** „7, 9 und 12 m“ */
export const depths = (all: readonly number[], units?: TextUnits): string =>
  withUnit(spoken([...new Set(all.map((depth_m) => depthNumber(depth_m, units)))]), units);

/** „einmal“, „zweimal“, „3-mal“ */
export const howOften = (count: number): string =>
  count === 1 ? "einmal" : count === 2 ? "zweimal" : `${shown(count)}-mal`;

export const kelvin = (cct_K: number): string => `${shown(Math.round(cct_K / 100) * 100)} K`;

export const lumens = (flux_lm: number): string => `${grouped(Number(flux_lm.toPrecision(2)))} lm`;

/** „⅔ Blendenstufe“, „2⅓ Blendenstufen“ */
export function stops(value: number): string {
  const { text, one, none } = thirdsOf(value);
  if (none) return "weniger als ⅓ Blendenstufe";
  return `${text} ${one ? "Blendenstufe" : "Blendenstufen"}`;
}

/** Stufen von etwas, das nur geschätzt ist, in ganzen. */
export const wholeStops = (value: number): string => stops(Math.max(1, Math.round(value)));

/** Dasselbe nach „um“. */
export const redder = (value: number): string =>
  Math.abs(value) < 1 / 6
    ? "nicht röter als der Rest"
    : `gegenüber dem Rest ${stops(Math.abs(value))} zu ${value > 0 ? "rot" : "grün"}`;

export const densityOf = (density: number): string =>
  shown(density, Math.round(density * 100) % 10 === 0 ? 1 : 2);

/** Ein ND-Filter im Akkusativ. */
export const neutral = (density: number): string =>
  `einen ND-Filter der Dichte ${shown(density, 1)} (${stops(density * Math.log2(10))})`;

/** Eine Zahl, wie sie angegeben wurde, mit Komma. */
export const asGiven = (value: number): string => String(value).replace(".", ",");

/** Wie hell eines gegen ein anderes ist: „60 %“, „13-mal“. */
export function brightness(value: number): string {
  const { none, times, count } = brightnessOf(value);
  if (none) return `weniger als ${percent(1)}`;
  return times ? `${count}-mal` : percent(count);
}

/** Wie stark ein Farbfehler ist; Grenzen wie im Englischen. */
export const strength = (delta_e00: number): "leicht" | "deutlich" | "stark" =>
  delta_e00 < 5 ? "leicht" : delta_e00 < 12 ? "deutlich" : "stark";

/** Im Nominativ und im Akkusativ. */
export const aCast = (delta_e00: number): string => `ein ${strength(delta_e00)}er Farbstich`;
export const castOf = (delta_e00: number): string => `einen ${strength(delta_e00)}en Farbstich`;

/** Was mit einem Farbfehler geschieht, hinter dem, was ihn senkt; ein Anteil nur, wo er seinen Rang behält. */
export function errorFall(from: number, to: number): string {
  if (strength(from) !== strength(to))
    return `senkt den Farbfehler von ${strength(from)} auf ${strength(to)}`;
  const share = roughly((100 * (from - to)) / from);
  return `senkt den Farbfehler ${share > 0 ? `um etwa ${percent(share)}` : "ein wenig"} (er bleibt ${strength(to)})`;
}

/** Ein Anteil: „etwa 10 %“. */
export function shareOf(value: number): string {
  const rounded = roughly(value);
  return rounded > 0 ? `etwa ${percent(rounded)}` : "kaum etwas";
}

/** Hinter einem Farbstich des einen Lichts gegen das andere. */
export const tooRed = (red_excess: number): string =>
  Math.abs(red_excess) < 1 / 6 ? "" : red_excess > 0 ? " (zu rot)" : " (zu grün)";

export const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
