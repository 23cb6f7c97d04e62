import { capital } from "./capital.js";

/** A number in a sentence, with a fixed count of decimals; -0 never shows. */
export function shown(value: number, decimals = 0): string {
  const text = value.toFixed(decimals);
  return Number(text) === 0 ? (0).toFixed(decimals) : text;
}

/** A depth as a diver reads it off: to 1 m, to 0.5 m where shallower than 5 m. */
export const metres = (depth_m: number): string =>
  String(depth_m < 5 ? Math.round(depth_m * 2) / 2 : Math.round(depth_m));

/** A depth or a range of depths, in the middle of a sentence. */
export const metresBetween = (min_m: number, max_m: number): string =>
  metres(min_m) === metres(max_m) ? `at ${metres(min_m)} m` : `from ${metres(min_m)} to ${metres(max_m)} m`;

/** The same, to begin a sentence. */
export const atDepths = (min_m: number, max_m: number): string => capital(metresBetween(min_m, max_m));

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

/** A density as it stands on a filter: 0.6, 0.45. */
export const densityOf = (density: number): string =>
  density.toFixed(Math.round(density * 100) % 10 === 0 ? 1 : 2);

/** A neutral filter, with its usual name in stops. */
export const neutral = (density: number): string =>
  `an ND of density ${shown(density, 1)} (${stops(density * Math.log2(10))})`;

/** How strong a colour error is, by its CIEDE2000: about 1 is the least you can see. Judgement, no published source. */
export const strength = (delta_e00: number): string =>
  delta_e00 < 5 ? "slight" : delta_e00 < 12 ? "clear" : "strong";

/** A colour cast in words. */
export const castOf = (delta_e00: number): string => `a ${strength(delta_e00)} cast`;

/** By how much a colour error falls, after its subject. */
export function errorFall(from: number, to: number): string {
  const percent = shown((100 * (from - to)) / from);
  const ranks =
    strength(from) === strength(to)
      ? `it stays ${strength(to)}`
      : `from ${strength(from)} to ${strength(to)}`;
  return `cuts the colour error by ${percent} % (${ranks})`;
}
