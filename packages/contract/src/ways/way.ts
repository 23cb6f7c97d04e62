/** One way to give something. */
export interface Way {
  /** What types call it, for instance `WaterByType`. */
  name: string;
  /** Fields that it cannot do without. */
  needs: readonly string[];
  /** Further fields that say something beside it. */
  takes: readonly string[];
  /** Where a field decides which way it is: the values that stand for this one. */
  values?: Readonly<Record<string, readonly string[]>>;
}

/**
 * Something that is given in one of several ways. The fields of the other ways do not go with the one that is taken.
 * They say of the rules between fields what a type can say, so that a client's compiler knows it: `ways.test.ts` holds them
 * to the rules, over every set of the fields concerned.
 */
export interface Ways {
  /** What is allowed, in a sentence that an editor shows. */
  says: string;
  /** The plainest last, here and by name: it is what compilers compare with where a caller gives none. */
  ways: readonly Way[];
}

/** Every field of `of`. */
export function fieldsOfWays({ ways }: Ways): string[] {
  return [...new Set(ways.flatMap(({ needs, takes }) => [...needs, ...takes]))];
}

/** Whether `scene` gives what it gives in one of the ways. */
export function isOneWay(of: Ways, scene: Readonly<Record<string, unknown>>): boolean {
  const given = fieldsOfWays(of).filter((field) => scene[field] !== undefined);
  return of.ways.some(({ needs, takes, values = {} }) => {
    const known = new Set([...needs, ...takes]);
    const fits = (field: string) => values[field]?.some((value) => value === scene[field]) ?? true;
    return needs.every((field) => scene[field] !== undefined) && given.every((f) => known.has(f) && fits(f));
  });
}
