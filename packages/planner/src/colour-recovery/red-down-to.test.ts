import { daylightScene } from "@sunfathom/fixtures/scenes";
import { CLEAR, filterTransmittance } from "@sunfathom/optics";
import { describe, expect, it } from "vitest";
import { cameraState } from "../camera/camera-state.js";
import { conditionsOf } from "../light/conditions.js";
import { stageAt } from "../light/stage.js";
import { underwater } from "../light/underwater.js";
import { NOMINAL } from "../uncertainty/nuisance.js";
import { recordGrey } from "./record-grey.js";
import { depthWithin_m, redDownTo_m } from "./red-down-to.js";
import { ACCEPTABLE, GONE } from "./red-light.js";

const scene = daylightScene("IB", 50, 5);
const conditions = conditionsOf(scene);
const downTo_m = (signalToNoise: number, filter = CLEAR) =>
  redDownTo_m(conditions, NOMINAL, filter, signalToNoise);

describe("the depth down to which red is as good as asked", () => {
  it.each([
    ["acceptable", ACCEPTABLE, CLEAR],
    ["more than the noise", GONE, CLEAR],
    ["acceptable behind a red filter", ACCEPTABLE, filterTransmittance("red", 0.6)],
  ])("is, to a percent, where a grey there is just %s", (_what, ratio, filter) => {
    const depth_m = downTo_m(ratio, filter);
    const redAt = (at_m: number) =>
      recordGrey(stageAt(underwater(conditions, NOMINAL), at_m), filter, cameraState(scene, NOMINAL))
        .redLight;
    expect(redAt(depth_m)).toBeGreaterThanOrEqual(ratio);
    expect(redAt(depth_m * 1.01)).toBeLessThan(ratio);
  });

  it("lies within the bounds of the search, whatever is asked", () => {
    expect(downTo_m(1e9)).toBeCloseTo(0.1, 9);
    expect(downTo_m(0) / 60).toBeCloseTo(1, 1);
    expect(downTo_m(0)).toBeLessThanOrEqual(60);
  });
});

it("a depth by its logarithm is held to the same bounds", () => {
  expect([3, -10, 10, Math.log2(60), Math.log2(0.1)].map(depthWithin_m)).toEqual([
    8,
    0.1,
    60,
    expect.closeTo(60, 9),
    expect.closeTo(0.1, 9),
  ]);
});
