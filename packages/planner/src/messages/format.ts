/** A number in a sentence, with a fixed count of decimals; -0 never shows. */
export function shown(value: number, decimals = 0): string {
  const text = value.toFixed(decimals);
  return Number(text) === 0 ? (0).toFixed(decimals) : text;
}

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
