/** Settings as cameras have them on their dials: the nearest third of a stop. Exact values stay in the figures. */

/** One decade of ISO speeds in thirds (preferred numbers R10 as ISO 12232 rounds them). */
const ISO_DECADE = [100, 125, 160, 200, 250, 320, 400, 500, 640, 800];
/** f-numbers in thirds of a stop, as engraved. */
const F_NUMBERS = [
  0.7, 0.8, 0.9, 1, 1.1, 1.2, 1.4, 1.6, 1.8, 2, 2.2, 2.5, 2.8, 3.2, 3.5, 4, 4.5, 5, 5.6, 6.3, 7.1, 8, 9, 10,
  11, 13, 14, 16, 18, 20, 22, 25, 29, 32, 36, 40, 45, 51, 57, 64,
];

export function dialIso(iso: number): string {
  const thirds = Math.round(3 * Math.log2(iso / 100));
  const decade = Math.floor(thirds / ISO_DECADE.length);
  // Ten thirds are ten times the speed, near enough (2^(10/3) = 10.08).
  const value = (ISO_DECADE[thirds - decade * ISO_DECADE.length] ?? 0) * 10 ** decade;
  return String(Math.round(value));
}

/** With a point in every language, as it is engraved. Beyond what is engraved, the number itself. */
export function dialFNumber(f_number: number): string {
  if (f_number > 70 || f_number < 0.65) return f_number.toFixed(1);
  const distance = (n: number) => Math.abs(Math.log(n / f_number));
  return String(F_NUMBERS.reduce((best, n) => (distance(n) < distance(best) ? n : best)));
}
