/** The value of a field, in the one form that the model sees: there is no negative zero. */
function plain<T>(value: T): T {
  return Object.is(value, -0) ? (0 as T) : value;
}

/** Some fields of `T`, absent or with a value, but never undefined. */
type Given<T, K extends keyof T> = { [F in K]?: Exclude<T[F], undefined> };

/** Those of the fields `names` that `source` has, in the order of `names`. */
export function given<T extends object, K extends keyof T>(source: T, names: readonly K[]): Given<T, K> {
  const fields: { [F in K]?: T[F] } = {};
  for (const name of names) if (source[name] !== undefined) fields[name] = plain(source[name]);
  return fields as Given<T, K>;
}

type Loose<T> = { [K in keyof T]: T[K] | undefined };

/** The list `items`, each item with its fields in the order of `names`, which are all that a `T` has. */
export function inOrder<T extends object>(
  items: readonly Partial<Loose<T>>[],
  names: readonly (keyof T)[],
): T[] {
  return items.map((item) => given(item, names) as T);
}

/** The value that the caller gave for the field `name`, or else its default, of which `assumed` takes note. */
export function filled<T>(value: T | undefined, fallback: T, name: string, assumed: string[]): T {
  if (value !== undefined) return plain(value);
  assumed.push(name);
  return fallback;
}
