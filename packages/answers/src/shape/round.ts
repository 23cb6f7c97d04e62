/** Powers of ten, by exponent. */
export const powers = Array.from({ length: 16 }, (_, exponent) => 10 ** exponent);

/**
 * Rounds to decimals the way people do on paper: half away from zero, judged by the digits that a reader sees (the
 * shortest decimal text of the number), so that 1.005 is 1.01 and every engine agrees.
 * @param value finite
 * @param decimals 0 to 15
 * @returns never negative zero
 */
export function round(value: number, decimals: number): number {
  const units = unitsOf(value, decimals);
  if (units === Number.POSITIVE_INFINITY) return value;
  const size = units / (powers[decimals] ?? Number.NaN);
  return value < 0 && size > 0 ? -size : size;
}

/** How many units of the last decimal the rounded size is; infinite where a number has no decimals left to round. */
export function unitsOf(value: number, decimals: number): number {
  const power = powers[decimals];
  if (power === undefined) throw new RangeError(`Cannot round to ${decimals} decimals.`);
  const scaled = Math.abs(value) * power;
  if (scaled >= 2 ** 52) return Number.POSITIVE_INFINITY;
  const floor = Math.floor(scaled);
  const rest = scaled - floor;
  // Multiplying may have shifted the last digits, by less than this: only so near the middle does that matter.
  const up = Math.abs(rest - 0.5) > scaled * 1e-15 ? rest > 0.5 : roundsUp(Math.abs(value), decimals);
  return up ? floor + 1 : floor;
}

/** Whether the first digit that `decimals` decimals leave out is five or more. */
function roundsUp(size: number, decimals: number): boolean {
  const [mantissa = "", exponent = "0"] = String(size).split("e");
  const [whole = "", fraction = ""] = mantissa.split(".");
  const digits = whole + fraction;
  const position = whole.length + Number(exponent) + decimals;
  return position >= 0 && Number(digits[position] ?? "0") >= 5;
}
