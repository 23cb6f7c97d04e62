// The numbers behind the answer, in the order in which it reads them, for one state of the world at a time.
import { SEEN_COUNT } from "@sunfathom/optics";
import { describe, expect, it } from "vitest";
import { daylightScene } from "../../../../test/support/scenes.js";
import { conditionsOf } from "../light/conditions.js";
import { equalDepthsOf } from "../light/depths.js";
import { underwater } from "../light/underwater.js";
import { NOMINAL, type Nuisance } from "../uncertainty/nuisance.js";
import { Fading } from "./fading.js";

const scene = daylightScene("IB", 50, 3, 12);
const EYE = 3;

/** Depth by depth the losses and the level, and the two depths of red. */
function read(change: Partial<Nuisance>, fading = new Fading(conditionsOf(scene), equalDepthsOf(scene))) {
  const numbers = fading.numbersIn(underwater(conditionsOf(scene), { ...NOMINAL, ...change }));
  const depths = equalDepthsOf(scene).count;
  expect(numbers).toHaveLength(depths * (SEEN_COUNT + 1) + 2);
  const rows = Array.from({ length: depths }, (_, d) =>
    numbers.slice(d * (SEEN_COUNT + 1), (d + 1) * (SEEN_COUNT + 1)),
  );
  return { rows, red_m: numbers.slice(-2) };
}

describe("how a scene's light fades", () => {
  it("keeps level and loss together: what the eye loses is what the level falls by", () => {
    const { rows } = read({});
    const top = rows[0][SEEN_COUNT] + rows[0][EYE];
    for (const row of rows) expect(row[SEEN_COUNT] + row[EYE]).toBeCloseTo(top, 12);
  });

  it("is a stop brighter everywhere under twice the daylight, and loses the same", () => {
    const [once, twice] = [read({}), read({ daylightScale: 2 })];
    once.rows.forEach((row, d) => {
      expect(twice.rows[d].slice(0, SEEN_COUNT)).toEqual(row.slice(0, SEEN_COUNT));
      expect(twice.rows[d][SEEN_COUNT] - row[SEEN_COUNT]).toBeCloseTo(1, 12);
    });
    expect(twice.red_m).toEqual(once.red_m);
  });

  it("gives each water and each sensor its own, whatever was asked before", () => {
    const fading = new Fading(conditionsOf(scene), equalDepthsOf(scene));
    const states = [
      {},
      { kdRemainderScale: 1.5 },
      { crosstalkSd: 1 },
      { kdRemainderScale: 1.5, crosstalkSd: 1 },
      {},
    ];
    for (const state of states) expect(read(state, fading)).toEqual(read(state));
    const [plain, murky, other] = states.map((state) => read(state));
    expect(murky.red_m[0]).toBeLessThan(plain.red_m[0]);
    expect(other.red_m).toEqual(plain.red_m);
    // Only red has cross-talk.
    expect(other.rows[0][0]).not.toBe(plain.rows[0][0]);
    expect(other.rows[0].slice(1)).toEqual(plain.rows[0].slice(1));
  });
});
