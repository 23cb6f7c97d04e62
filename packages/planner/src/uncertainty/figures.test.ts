import fc from "fast-check";
import { expect, it } from "vitest";
import { eachFigure } from "./figures.js";

const number = fc.double({ noNaN: true });
const figures = fc.letrec<{ nested: unknown }>((tie) => ({
  nested: fc.oneof(
    { depthSize: "small", withCrossShrink: true },
    number,
    fc.array(number, { maxLength: 4 }).map((column) => Float64Array.from(column)),
    fc.array(tie("nested"), { maxLength: 4 }),
    fc.dictionary(fc.stringMatching(/^[a-z]{1,4}$/), tie("nested"), { maxKeys: 4, noNullPrototype: true }),
  ),
})).nested;

const plain = (nested: unknown): unknown =>
  JSON.parse(JSON.stringify(nested, (_, value) => (value instanceof Float64Array ? [...value] : value)));

it("gives every number back under the name that it came with, beside itself in another evaluation (law)", () => {
  fc.assert(
    fc.property(figures, (nested) => {
      const of = { nested } as { nested: number };
      expect(plain(eachFigure(of, [], (first) => first))).toEqual(plain(of));
      const twin = eachFigure(of, [structuredClone(of)], (_, [other]) => other);
      expect(plain(twin)).toEqual(plain(of));
    }),
    { seed: 1, numRuns: 200 },
  );
});

interface Named {
  depths: { red: number; green: number }[];
  levels: Float64Array;
  reach_m: number;
}
const first: Named = { depths: [{ red: 1, green: 2 }], levels: Float64Array.of(5), reach_m: 3 };

it("goes by names, not by the order in which an evaluation has them", () => {
  const other: Named = { reach_m: 30, levels: Float64Array.of(50), depths: [{ green: 20, red: 10 }] };
  expect(eachFigure(first, [other], (one, [ten]) => `${one} ${ten}`)).toEqual({
    depths: [{ red: "1 10", green: "2 20" }],
    levels: ["5 50"],
    reach_m: "3 30",
  });
});

it.each([
  ["a name that is missing", { depths: undefined }, "depths is not among the figures of every evaluation"],
  ["a shorter list", { depths: [] }, "0 is not among"],
  ["a number for a list", { depths: 1 }, "0 is not among"],
  ["a column for a list", { depths: Float64Array.of(1) }, "0 is not among"],
  ["a list for a number", { reach_m: [3] }, "what is a number is one in every evaluation"],
  ["a longer column", { levels: Float64Array.of(1, 2) }, "what is a column is one of the same length"],
  ["a list for a column", { levels: [1] }, "what is a column is one of the same length"],
])("refuses %s", (_, change, message) => {
  expect(() => eachFigure(first, [{ ...first, ...change } as Named], (one) => one)).toThrow(message);
});
