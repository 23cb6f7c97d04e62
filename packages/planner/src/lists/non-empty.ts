/** Lists that are never empty, such as the depths of a scene: their ends are there by type. */
export type NonEmpty<T> = [T, ...T[]];

export const lastOf = <T>(list: Readonly<NonEmpty<T>>): T => list[list.length - 1] ?? list[0];

/** Of an odd number of items the one in their middle. */
export const middleItem = <T>(list: Readonly<NonEmpty<T>>): T => list[(list.length - 1) / 2] ?? list[0];

/** The list itself, once it is known to hold something. @throws RangeError when it is empty. */
export function nonEmpty<T>(list: readonly T[], what: string): NonEmpty<T> {
  const [first, ...others] = list;
  if (first === undefined) throw new RangeError(`no ${what}`);
  return [first, ...others];
}

/** What a function makes of each item. */
export const mapEach = <T, U>(
  [first, ...others]: Readonly<NonEmpty<T>>,
  f: (item: T, index: number) => U,
): NonEmpty<U> => [f(first, 0), ...others.map((item, i) => f(item, i + 1))];

/** What a function makes of two lists of one length, item by item. @throws RangeError when they are not. */
export function mapBoth<A, B, U>(
  first: Readonly<NonEmpty<A>>,
  second: Readonly<NonEmpty<B>>,
  f: (a: A, b: B) => U,
): NonEmpty<U>;
export function mapBoth<A, B, U>(first: readonly A[], second: readonly B[], f: (a: A, b: B) => U): U[];
export function mapBoth<A, B, U>(first: readonly A[], second: readonly B[], f: (a: A, b: B) => U): U[] {
  if (first.length !== second.length)
    throw new RangeError(`${first.length} items do not go with ${second.length}`);
  return first.map((item, i) => f(item, itemAt(second, i)));
}

/** An item that must be there. @throws RangeError when it is not. */
export function itemAt<T>(list: readonly T[], index: number): T {
  const item = list[index];
  if (item === undefined) throw new RangeError(`no item ${index} among ${list.length}`);
  return item;
}

/** The same for a spectrum or another array of numbers: a function of its own, so that loops over it stay fast. */
export function valueAt(values: Float64Array, index: number): number {
  const value = values[index];
  if (value === undefined) throw new RangeError(`no number ${index} among ${values.length}`);
  return value;
}

export const lastValue = (values: Float64Array): number => valueAt(values, values.length - 1);
