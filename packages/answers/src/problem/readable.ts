/** Figures that a person reads of a number. */
const figures = 6;
/** Figures that tell any two numbers apart (ECMA-262, Number::toString). */
const all = 17;

/**
 * What a message is made of, with no more digits than a person reads: all its numbers to six figures, or to as many as it takes
 * to tell them apart and from whole ones, so that none seems to keep a limit that it breaks. For messages alone: what is allowed, and
 * `parameters`, stay as they are.
 */
export function readable<Parameters>(parameters: Parameters): Parameters {
  const numbers = numbersIn(parameters);
  for (let count = figures; count < all; count += 1) {
    const rounded = (value: number): number => Number(value.toPrecision(count));
    if (alike(numbers, numbers.map(rounded))) return withNumbers(parameters, rounded) as Parameters;
  }
  return parameters;
}

function alike(exact: readonly number[], rounded: readonly number[]): boolean {
  return (
    new Set(rounded).size === new Set(exact).size &&
    exact.every((value, index) => Number.isInteger(value) || !Number.isInteger(rounded[index]))
  );
}

function numbersIn(value: unknown): number[] {
  if (typeof value === "number") return [value];
  return typeof value === "object" && value !== null ? Object.values(value).flatMap(numbersIn) : [];
}

function withNumbers(value: unknown, rounded: (value: number) => number): unknown {
  if (typeof value === "number") return rounded(value);
  if (Array.isArray(value)) return value.map((item) => withNumbers(item, rounded));
  if (typeof value !== "object" || value === null) return value;
  return Object.fromEntries(Object.entries(value).map(([name, item]) => [name, withNumbers(item, rounded)]));
}
