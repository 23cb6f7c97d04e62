import fc from "fast-check";
import { expect, it } from "vitest";
import { mapFalling, mapRising } from "./percentiles.js";

const estimate = fc
  .array(fc.double({ min: -5, max: 5, noNaN: true }), { minLength: 3, maxLength: 3 })
  .map((values) => {
    const [low, likely, high] = values.sort((a, b) => a - b);
    return { low, likely, high };
  });

it("percentiles stay in order, and stay the percentiles of what they are of, through rising and falling functions (law)", () => {
  fc.assert(
    fc.property(estimate, (e) => {
      expect(mapRising(e, (x) => 2 ** x)).toEqual({
        low: 2 ** e.low,
        likely: 2 ** e.likely,
        high: 2 ** e.high,
      });
      expect(mapFalling(e, (x) => 2 ** -x)).toEqual({
        low: 2 ** -e.high,
        likely: 2 ** -e.likely,
        high: 2 ** -e.low,
      });
      const back = mapFalling(
        mapFalling(e, (x) => -x),
        (x) => -x,
      );
      expect(back).toEqual(e);
    }),
    { seed: 1, numRuns: 50 },
  );
});
