/**
 * Figures by name, as a decision has them: numbers, columns of numbers such as one a depth, and records and lists of these. What
 * is computed often keeps columns: many small records would cost more than the model.
 */
import { itemAt, valueAt } from "../lists/non-empty.js";

/** What figures may be made of. */
export type Figures<F> = {
  readonly [Name in keyof F]: NonNullable<F[Name]> extends number | Float64Array
    ? F[Name]
    : NonNullable<F[Name]> extends object
      ? Figures<F[Name]>
      : never;
};

/** The same names with a `T` for each number. */
export type Each<F, T> = F extends number
  ? T
  : F extends Float64Array
    ? T[]
    : { [Name in keyof F]: Each<F[Name], T> };

type Nested = number | Float64Array | { readonly [name: string]: Nested };

/** Makes something of a number and of what stands in its place in other evaluations; the array is used again for the next one. */
type OfNumber<T> = (number: number, others: Float64Array) => T;

/** One walk over a first evaluation and others beside it. */
class Walk<T> {
  readonly #others: Float64Array;

  constructor(
    count: number,
    readonly f: OfNumber<T>,
  ) {
    this.#others = new Float64Array(count);
  }

  over(first: Nested, others: readonly Nested[]): unknown {
    if (typeof first === "number") return this.#number(first, others);
    if (first instanceof Float64Array) return this.#column(first, others);
    const inside = (name: string) =>
      this.over(
        figureOf(first, name),
        others.map((other) => figureOf(other, name)),
      );
    if (Array.isArray(first)) return Object.keys(first).map(inside);
    const named: Record<string, unknown> = {};
    for (const name of Object.keys(first)) named[name] = inside(name);
    return named;
  }

  #number(first: number, others: readonly Nested[]): T {
    others.forEach((other, k) => {
      if (typeof other !== "number") throw new RangeError("what is a number is one in every evaluation");
      this.#others[k] = other;
    });
    return this.f(first, this.#others);
  }

  #column(first: Float64Array, others: readonly Nested[]): T[] {
    const columns = others.map((other) => columnLike(first, other));
    const made: T[] = [];
    for (let row = 0; row < first.length; row++) {
      for (let k = 0; k < columns.length; k++) this.#others[k] = valueAt(itemAt(columns, k), row);
      made.push(this.f(valueAt(first, row), this.#others));
    }
    return made;
  }
}

function figureOf(figures: Nested, name: string): Nested {
  const figure = typeof figures === "number" || figures instanceof Float64Array ? undefined : figures[name];
  if (figure === undefined) throw new RangeError(`${name} is not among the figures of every evaluation`);
  return figure;
}

function columnLike(first: Float64Array, other: Nested): Float64Array {
  if (other instanceof Float64Array && other.length === first.length) return other;
  throw new RangeError("what is a column is one of the same length in every evaluation");
}

/**
 * Under each name what a function makes of its number in a first evaluation and of those in the others.
 * @throws RangeError where an evaluation does not have the names of the first.
 */
export const eachFigure = <F extends Figures<F>, T>(
  first: F,
  others: readonly F[],
  f: OfNumber<T>,
): Each<F, T> => new Walk(others.length, f).over(first as Nested, others as readonly Nested[]) as Each<F, T>;
