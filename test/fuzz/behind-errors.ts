// Bodies whose lists are of another kind, behind about as many other errors as an answer lists: what is not looked at must
// not be relied on either.
import fc from "fast-check";
import type { Scene } from "./arbitrary.js";
import type { Operation } from "./description.js";
import { fieldsOf } from "./fields.js";

/** A body, and the names in it that no operation knows. */
export interface Behind {
  strangers: string[];
  body: Scene;
}

/** What stands in place of a list: nothing that a rule between fields could read as one. */
const noList: fc.Arbitrary<unknown> = fc.oneof(
  fc.constantFrom<unknown[]>(null, true, 7, "a", {}, [null], [7], [[]], [[[]]], [{}, null], { length: 3 }),
  fc.constantFrom<unknown[]>({ 0: {}, length: 1 }, { map: 1 }, { length: -1 }, [{ id: {} }, { id: {} }]),
  fc.nat({ max: 3000 }).map((count) => Array.from({ length: count }, () => ({ id: "a" }))),
  fc.jsonValue(),
);

/** Bodies of an operation with 45 to 60 strangers before up to four such values, each where a list should be. */
export function behindErrors(operation: Operation): fc.Arbitrary<Behind> {
  const known = Object.keys(operation.body?.properties ?? {});
  // Written as a member of an object here, `__proto__` would be none.
  const isStrange = (name: string) => !known.includes(name) && name !== "__proto__";
  const strangers = fc.uniqueArray(fc.oneof(fc.string(), misspelt(known)).filter(isStrange), {
    minLength: 45,
    maxLength: 60,
  });
  const lists = fieldsOf(operation).filter(({ schema }) => schema.type === "array");
  const places = fc.uniqueArray(fc.constantFrom(...lists.map(({ pointer }) => pointer.slice(1).split("/"))), {
    minLength: 1,
    maxLength: 4,
    selector: ([name]) => name,
  });
  const right = fc.constantFrom<object[]>({}, ...operation.examples);
  return fc
    .tuple(
      strangers,
      fc.jsonValue({ maxDepth: 1 }),
      places,
      fc.array(noList, { minLength: 4, maxLength: 4 }),
      right,
    )
    .map(([names, value, ways, values, example]) => ({
      strangers: names,
      body: {
        ...Object.fromEntries(names.map((name) => [name, value])),
        ...example,
        ...Object.fromEntries(ways.map(([name = "", ...way], nth) => [name, atEndOf(way, values[nth])])),
      },
    }));
}

/** Names that are taken for slips of the pen, or for another unit, and compared with all that there are. */
function misspelt(known: readonly string[]): fc.Arbitrary<string> {
  const endings = fc.constantFrom("s", "S", "_m", "_ft", "_in", "_");
  return fc.tuple(fc.constantFrom(...known), endings).map(([name, ending]) => `${name}${ending}`);
}

/** `value` at the end of a way of names and indices. */
function atEndOf([step, ...rest]: string[], value: unknown): unknown {
  if (step === undefined) return value;
  return step === "0" ? [atEndOf(rest, value)] : { [step]: atEndOf(rest, value) };
}
