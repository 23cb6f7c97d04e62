import { daylightScene, OUTER_REEF_MORNING, TWO_LAMPS } from "@sunfathom/fixtures/scenes";
import { describe, expect, it } from "vitest";
import { closeFilterCall } from "./close-calls.js";
import { decided } from "./decided.test-support.js";

describe("close calls", () => {
  it("tell the other filter where it may as well be the better one", () => {
    const { filter } = decided(OUTER_REEF_MORNING);
    const call = (probability_better: number) =>
      closeFilterCall(
        { ...filter, runner_up: { ...filter.runner_up, probability_better } },
        { kind: "none" },
      );
    expect(call(0.45)).toEqual([
      { code: "close_filter", parameters: { filter: { kind: "none" }, probability: 0.45 } },
    ]);
    expect(call(0.3)).toEqual([]);
  });

  it("tell what else could be done with the lamps where two verdicts meet, from both sides", () => {
    const at = (distance_m: number) =>
      decided({
        ...daylightScene("IB", 60, 12),
        subject_distance_m: 0.5,
        lamps: [{ ...TWO_LAMPS, flux_lm: 15000, distance_m }],
      });
    let [near, far] = [0.05, 1];
    for (let i = 0; i < 12; i++) {
      const middle = (near + far) / 2;
      if (at(middle).lampPlan === "lamps_lead") near = middle;
      else far = middle;
    }
    const call = (d: ReturnType<typeof at>) =>
      d.closeCalls.find(({ code }) => code === "close_lamps")?.parameters;
    expect(at(near).lampPlan).toBe("lamps_lead");
    expect(call(at(near))).toMatchObject({ plan: "lamps_off", filter: { kind: "red" } });
    expect(call(at(far))).toMatchObject({ plan: "lamps_lead" });
    expect(call(at(near / 3))).toBeUndefined();
  });
});
