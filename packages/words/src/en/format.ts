/** A number in a sentence, with a fixed count of decimals; -0 never shows. */
export function shown(value: number, decimals = 0): string {
  const text = value.toFixed(decimals);
  return Number(text) === 0 ? (0).toFixed(decimals) : text;
}

/** A depth or a range of depths, to begin a sentence. */
export const atDepths = (min_m: number, max_m: number): string =>
  min_m === max_m ? `At ${shown(min_m, 1)} m` : `Over ${shown(min_m, 1)} to ${shown(max_m, 1)} m`;

/** A count as a word: once, twice, 3 times. */
export const howOften = (count: number): string =>
  count === 1 ? "once" : count === 2 ? "twice" : `${shown(count)} times`;

/** A colour temperature as cameras have it, to the nearest hundred kelvin. */
export const kelvin = (cct_K: number): string => shown(Math.round(cct_K / 100) * 100);

/** A luminous flux, to two figures: lamps are not sold more finely. */
export const lumens = (flux_lm: number): string => shown(Number(flux_lm.toPrecision(2)));

/** How much more, or less, red against green one light has than another. */
export const redder = (stops: number): string =>
  Math.abs(stops) < 0.05
    ? "as red against green"
    : stops >= 0
      ? `${shown(stops, 1)} stops more red against green`
      : `${shown(-stops, 1)} stops less red against green`;

/** Stops as a dial has them, in thirds: 1 stop, 2⅓ stops. */
export function stops(value: number): string {
  const thirds = Math.max(0, Math.round(value * 3));
  const whole = Math.floor(thirds / 3);
  const text = `${whole > 0 || thirds === 0 ? whole : ""}${["", "⅓", "⅔"][thirds % 3]}`;
  return `${text} ${thirds > 0 && thirds <= 3 ? "stop" : "stops"}`;
}

/** A depth that a diver can hit. */
export const metres = (depth_m: number): string => String(Math.round(depth_m * 2) / 2);

/** A neutral filter, with its usual name in stops. */
export const neutral = (density: number): string =>
  `an ND of density ${shown(density, 1)} (${stops(density * Math.log2(10))})`;

const strength = (delta_e00: number): string =>
  delta_e00 < 5 ? "slight" : delta_e00 < 12 ? "clear" : "strong";

/** A colour error in words. */
export const castOf = (delta_e00: number): string => `a ${strength(delta_e00)} cast (${shown(delta_e00)})`;
