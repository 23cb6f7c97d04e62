/**
 * A pure function that remembers its last results, the oldest forgotten first: for what is costly and asked again and again within
 * one answer.
 */
export function remember<Args extends readonly unknown[], Result>(
  compute: (...args: Args) => Result,
  keyOf: (...args: Args) => string,
  limit: number,
): (...args: Args) => Result {
  const known = new Map<string, Result>();
  return (...args) => {
    const key = keyOf(...args);
    const found = known.get(key);
    if (found !== undefined) return found;
    const result = compute(...args);
    if (known.size >= limit) {
      const oldest = known.keys().next().value;
      if (oldest !== undefined) known.delete(oldest);
    }
    known.set(key, result);
    return result;
  };
}

/** A pure function of an object that is never changed, which remembers its result for as long as the object is in use. */
export function rememberFor<Key extends object, Result>(compute: (key: Key) => Result): (key: Key) => Result {
  const known = new WeakMap<Key, { result: Result }>();
  return (key) => {
    let found = known.get(key);
    if (found === undefined) {
      found = { result: compute(key) };
      known.set(key, found);
    }
    return found.result;
  };
}
