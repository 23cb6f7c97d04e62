import { brightnessOf } from "../numbers/brightness.js";
import { roughly } from "../numbers/roughly.js";
import type { TextUnits } from "../problems/texts.js";
import { capital } from "./capital.js";
import { spoken } from "./list.js";

/** A number in a sentence, with a fixed count of decimals; -0 never shows. */
export function shown(value: number, decimals = 0): string {
  const text = value.toFixed(decimals);
  return Number(text) === 0 ? (0).toFixed(decimals) : text;
}

// Lengths by the rules of numbers/lengths.ts, which a test holds them to: written out, since a page that computes offline in English
// would load that file beside its own for the sake of other languages.
const foot_m = 0.3048;
const rounded = (value: number, per: number): string => String(Math.round(value * per) / per);
const halves = (value: number): string => rounded(value, 2);
const withUnit = (text: string, units?: TextUnits): string => `${text} ${units === "imperial" ? "ft" : "m"}`;

/** The number alone of a depth: to 1 m, to 0.5 m where shallower than 5 m; to whole feet. */
export const depthNumber = (depth_m: number, units?: TextUnits): string =>
  units === "imperial" ? shown(depth_m / foot_m) : depth_m < 5 ? halves(depth_m) : shown(depth_m);

export const depth = (depth_m: number, units?: TextUnits): string =>
  withUnit(depthNumber(depth_m, units), units);

/** A distance to 0.1 m, and to 0.05 m below half a metre; to inches below a yard, to half feet below ten, and to whole feet above. */
export function distance(distance_m: number, units?: TextUnits): string {
  if (units !== "imperial") return withUnit(rounded(distance_m, distance_m < 0.5 ? 20 : 10));
  const feet = distance_m / foot_m;
  return feet < 3 ? `${shown(feet * 12)} in` : withUnit(feet < 10 ? halves(feet) : shown(feet), units);
}

/** A distance to whole centimetres, or to half inches. */
export const near = (distance_mm: number, units?: TextUnits): string =>
  units === "imperial" ? `${halves(distance_mm / 25.4)} in` : `${shown(distance_mm / 10)} cm`;

/** "5 to 18 m" */
export const span = (min_m: number, max_m: number, units?: TextUnits): string =>
  `${depthNumber(min_m, units)} to ${depth(max_m, units)}`;

/** A depth or a range of depths, in the middle of a sentence. */
export const between = (min_m: number, max_m: number, units?: TextUnits): string =>
  depthNumber(min_m, units) === depthNumber(max_m, units)
    ? `at ${depth(min_m, units)}`
    : `from ${span(min_m, max_m, units)}`;

/** The same, to begin a sentence. */
export const atDepths = (min_m: number, max_m: number, units?: TextUnits): string =>
  capital(between(min_m, max_m, units));

/** Depths that a diver can hit, as a spoken list: "7, 9 and 12 m". */
export const depths = (all: readonly number[], units?: TextUnits): string =>
  withUnit(spoken([...new Set(all.map((depth_m) => depthNumber(depth_m, units)))]), units);

/** A count as a word: once, twice, 3 times. */
export const howOften = (count: number): string =>
  count === 1 ? "once" : count === 2 ? "twice" : `${shown(count)} times`;

/** A colour temperature as cameras have it, to the nearest hundred kelvin. */
export const kelvin = (cct_K: number): string => shown(Math.round(cct_K / 100) * 100);

/** A luminous flux, to two figures: lamps are not sold more finely. */
export const lumens = (flux_lm: number): string => shown(Number(flux_lm.toPrecision(2)));

/** How much more, or less, red against green one light has than another. */
export const redder = (value: number): string =>
  Math.abs(value) < 1 / 6
    ? "no redder than the rest"
    : `${stops(Math.abs(value))} ${value > 0 ? "too red" : "too green"} against the rest`;

/** Stops as a dial has them, in thirds: 1 stop, 2⅓ stops. */
export function stops(value: number): string {
  const thirds = Math.round(value * 3);
  if (thirds <= 0) return "less than ⅓ stop";
  const whole = Math.floor(thirds / 3);
  return `${whole > 0 ? whole : ""}${["", "⅓", "⅔"][thirds % 3]} ${thirds <= 3 ? "stop" : "stops"}`;
}

/** Stops of what is only estimated, in whole ones. */
export const wholeStops = (value: number): string => stops(Math.max(1, Math.round(value)));

/** A density as it stands on a filter: 0.6, 0.45. */
export const densityOf = (density: number): string =>
  density.toFixed(Math.round(density * 100) % 10 === 0 ? 1 : 2);

/** A neutral filter, with its usual name in stops. */
export const neutral = (density: number): string =>
  `an ND of density ${shown(density, 1)} (${stops(density * Math.log2(10))})`;

/** How bright one thing is against another: "60 %", "13 times". */
export function brightness(percent: number): string {
  const { none, times, count } = brightnessOf(percent);
  return none ? "under 1 %" : `${count} ${times ? "times" : "%"}`;
}

/** How strong a colour error is, by its CIEDE2000: about 1 is the least you can see. Judgement, no published source. */
export const strength = (delta_e00: number): string =>
  delta_e00 < 5 ? "slight" : delta_e00 < 12 ? "noticeable" : "strong";

/** A colour cast in words. */
export const castOf = (delta_e00: number): string => `a ${strength(delta_e00)} cast`;

/** What is done to a colour error, after what does it: in words, and only where it keeps its rank by a share. */
export function errorFall(from: number, to: number): string {
  if (strength(from) !== strength(to))
    return `takes the colour error from ${strength(from)} to ${strength(to)}`;
  const percent = roughly((100 * (from - to)) / from);
  return `cuts the colour error ${percent > 0 ? `by about ${shown(percent)} %` : "a little"} (it stays ${strength(to)})`;
}

/** A share of something, at the start of what it is a share of: "about 10 % of". */
export function shareOf(percent: number): string {
  const rounded = roughly(percent);
  return rounded > 0 ? `about ${shown(rounded)} %` : "hardly any";
}

/** Beside a colour cast of one light against another. */
export const tooRed = (red_excess: number): string =>
  Math.abs(red_excess) < 1 / 6 ? "" : red_excess > 0 ? ", too red," : ", too green,";
