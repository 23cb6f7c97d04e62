/** The value of a field, in the one form that the model sees: there is no negative zero. */
export function plain<T>(value: T): T {
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

/** What has the fields of each of `Parts`. */
type Joined<Parts extends readonly object[]> = Parts extends readonly [
  infer First,
  ...infer Rest extends readonly object[],
]
  ? First & Joined<Rest>
  : unknown;

/**
 * One object with the fields of all parts, in their order. Not a literal with several spreads: beyond some dozen fields, V8
 * gives each object that comes from one a hidden class of its own, which takes longer than checking the scene, outlives the
 * request, and makes whoever reads the scene later look up each field anew.
 */
export function joined<const Parts extends readonly object[]>(...parts: Parts): Joined<Parts> {
  const fields: [string, unknown][] = [];
  for (const part of parts) fields.push(...Object.entries(part));
  return Object.fromEntries(fields) as Joined<Parts>;
}
