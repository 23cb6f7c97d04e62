// The chart's figures are those that filters are judged by.

import { daylightScene, NIGHT_WRECK, OUTER_REEF_MORNING } from "@sunfathom/fixtures/scenes";
import { CLEAR } from "@sunfathom/optics";
import { describe, expect, it } from "vitest";
import { cameraState } from "../camera/camera-state.js";
import { meritOf } from "../filter-choice/merit.js";
import { conditionsOf } from "../light/conditions.js";
import { stageAt } from "../light/stage.js";
import { underwater } from "../light/underwater.js";
import { NOMINAL } from "../uncertainty/nuisance.js";
import { chartUnderWater } from "./chart-under-water.js";

describe("the error of a chart under water", () => {
  it("is the merit of a filter choice where there is no open water to count with it", () => {
    const { depth_m, without, finish } = chartUnderWater(NIGHT_WRECK);
    const stage = stageAt(underwater(conditionsOf(NIGHT_WRECK), NOMINAL), depth_m);
    const merit = (of: "in_camera" | typeof finish) =>
      meritOf(stage, CLEAR, cameraState(NIGHT_WRECK, NOMINAL, of), of).delta_e00;
    expect(without.balanced.delta_e00).toBeCloseTo(merit("in_camera"), 9);
    expect(without.finished.delta_e00).toBeCloseTo(merit(finish), 9);
  });

  it("counts noise: little where there is light, much where hardly any colour is left to push", () => {
    const noise = ({ delta_e00, drawn_delta_e00 }: { delta_e00: number; drawn_delta_e00: number }) =>
      delta_e00 - drawn_delta_e00;
    const clear = chartUnderWater(OUTER_REEF_MORNING);
    const brown = chartUnderWater(daylightScene("7C", 50, 7));
    for (const stages of [clear.without, clear.filtered]) {
      for (const picture of Object.values(stages)) expect(noise(picture)).toBeGreaterThan(-0.2);
    }
    expect(noise(brown.filtered.finished)).toBeGreaterThan(noise(clear.filtered.finished) + 0.5);
  });
});
