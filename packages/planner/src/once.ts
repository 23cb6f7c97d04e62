/** Worked out when it is first asked for, and not again. */
export function once<T>(compute: () => T): () => T {
  let known: { value: T } | undefined;
  return () => {
    known ??= { value: compute() };
    return known.value;
  };
}
