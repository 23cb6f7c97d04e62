// What brings each step on the way up.
import { expect, it } from "vitest";
import { NIGHT_WRECK, OUTER_REEF_MORNING, REEF_WITH_LAMPS } from "../../../../../test/support/scenes.js";
import { decided, FLIPPED, parametersIn, toldBy } from "../decided.test-support.js";
import { changeStops, type Leg } from "../legs.js";
import { comingUp } from "./up.js";

const reef = decided(OUTER_REEF_MORNING);
const balanced = (leg: Leg, balance_depths_ascending_m: number[]): Leg => ({
  ...leg,
  balance: { ...leg.balance, balance_depths_ascending_m },
});

it("balances again on the way up, after the one at the deep end", () => {
  const [leg] = reef.legs;
  const steps = comingUp({ ...reef, legs: [balanced(leg, [18, 11, 5.2])] });
  expect(toldBy(steps)).toEqual([["coming_up", "balance_again", 11]]);
  expect(parametersIn(steps, "balance_again")).toEqual({
    depths_m: [11, 5.2],
    tolerance: leg.balance.balance_tolerance_delta_e00,
  });
  expect(comingUp({ ...reef, legs: [balanced(leg, [18])] })).toEqual([]);
});

it("changes the filter back where it was changed on the way down, by as many stops", () => {
  const { legs, ...flipped } = decided(FLIPPED);
  const [bare, filtered] = [balanced(legs[0], [3]), balanced(legs[1], [15])];
  const depth_m = bare.scene.max_depth_m;
  const steps = comingUp({ ...flipped, legs: [bare, filtered] });
  expect(toldBy(steps)).toEqual([["coming_up", "filter_out", depth_m]]);
  expect(parametersIn(steps, "filter_out")).toEqual({
    depth_m,
    stops: changeStops(bare, filtered),
    mount: "flip",
  });
  const other = comingUp({ ...flipped, legs: [{ ...bare, filtered: true }, filtered] });
  expect(toldBy(other)).toEqual([["coming_up", "filter_in", depth_m]]);
});

it("leaves a balance just below a change to the one that is made there, and comes up through the legs in turn", () => {
  const { legs, ...flipped } = decided(FLIPPED);
  const change_m = legs[1].scene.min_depth_m;
  const [bare, filtered] = [balanced(legs[0], [change_m, 1.5]), balanced(legs[1], [15, 9, change_m + 0.3])];
  const steps = comingUp({ ...flipped, legs: [bare, filtered] });
  expect(toldBy(steps)).toEqual([
    ["coming_up", "balance_again", 9],
    ["coming_up", "filter_out", change_m],
    ["coming_up", "balance_again", 1.5],
  ]);
  expect(steps[0].parameters).toMatchObject({ depths_m: [9] });
});

it("switches lamps off before they leave the water, where they are lit (common practice, no published source)", () => {
  const night = comingUp(decided(NIGHT_WRECK));
  expect(toldBy(night).slice(-1)).toEqual([["coming_up", "lamps_off_before_air", undefined]]);
  expect(night.at(-1)?.basis).toBe("common_practice");
  expect(comingUp(decided(REEF_WITH_LAMPS)).map(({ code }) => code)).not.toContain("lamps_off_before_air");
});
