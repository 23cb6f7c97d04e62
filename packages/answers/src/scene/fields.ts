/** The value of a field, in the one form that the model sees: there is no negative zero. */
function plain<T>(value: T): T {
  return Object.is(value, -0) ? (0 as T) : value;
}

type Given<T, K extends keyof T> = { [F in K]?: Exclude<T[F], undefined> };

/** Those of the fields `names` that `source` has, in the order of `names`. */
export function given<T extends object, K extends keyof T>(source: T, names: readonly K[]): Given<T, K> {
  const fields: Given<T, K> = {};
  for (const name of names) {
    const value = source[name];
    if (value !== undefined) fields[name] = plain(value) as Exclude<T[K], undefined>;
  }
  return fields;
}

/** The value that the caller gave for the field `name`, or else its default, of which `assumed` takes note. */
export function filled<T>(value: T | undefined, fallback: T, name: string, assumed: string[]): T {
  if (value !== undefined) return plain(value);
  assumed.push(name);
  return fallback;
}
