// The figures behind the answer, for one state of the world at a time.

import { daylightScene } from "@sunfathom/fixtures/scenes";
import { describe, expect, it } from "vitest";
import { conditionsOf } from "../light/conditions.js";
import { equalDepthsOf } from "../light/depths.js";
import { underwater } from "../light/underwater.js";
import { NOMINAL, type Nuisance } from "../uncertainty/nuisance.js";
import { Fading } from "./fading.js";

const scene = daylightScene("IB", 50, 3, 12);

function read(change: Partial<Nuisance>, fading = new Fading(conditionsOf(scene), equalDepthsOf(scene))) {
  const figures = fading.in(underwater(conditionsOf(scene), { ...NOMINAL, ...change }));
  const { depths, ...red_m } = figures;
  for (const column of Object.values(depths)) expect(column).toHaveLength(equalDepthsOf(scene).count);
  return { depths, red_m };
}

describe("how a scene's light fades", () => {
  it("keeps level and loss together: what the eye loses is what the level falls by", () => {
    const { level, photopic } = read({}).depths;
    const top = level[0] + photopic[0];
    level.forEach((here, d) => {
      expect(here + photopic[d]).toBeCloseTo(top, 12);
    });
  });

  it("is a stop brighter everywhere under twice the daylight, and loses the same", () => {
    const [once, twice] = [read({}), read({ daylightScale: 2 })];
    const { level, ...losses } = once.depths;
    expect(twice.depths).toMatchObject(losses);
    level.forEach((here, d) => {
      expect(twice.depths.level[d] - here).toBeCloseTo(1, 12);
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
    expect(murky.red_m.redToTenth_m).toBeLessThan(plain.red_m.redToTenth_m);
    expect(other.red_m).toEqual(plain.red_m);
    // Only red has cross-talk.
    const { red, ...others } = plain.depths;
    expect(other.depths.red).not.toEqual(red);
    expect(other.depths).toMatchObject(others);
  });
});
