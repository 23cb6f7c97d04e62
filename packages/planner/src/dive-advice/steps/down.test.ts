// What brings each step on the way down.
import { describe, expect, it } from "vitest";
import { DARK_AND_GREEN, daylightScene, OUTER_REEF_MORNING } from "../../../../../test/support/scenes.js";
import { decided, exposed, FLIPPED, parametersIn, toldBy } from "../decided.test-support.js";
import type { Decisions } from "../decisions.js";
import { changeStops, endOf, type Leg, startOf } from "../legs.js";
import { goingDown } from "./down.js";

const reef = decided(OUTER_REEF_MORNING);
const flipped = decided(FLIPPED);
const codes = (d: Decisions) => goingDown(d).map(({ code }) => code);
const balanced = (leg: Leg, balance_depths_descending_m: number[]): Leg => ({
  ...leg,
  balance: { ...leg.balance, balance_depths_descending_m },
});
const estimate = (likely: number) => ({ low: likely, likely, high: likely });
const [leg] = reef.legs;
const only = (one: Leg): Decisions => ({ ...reef, legs: [one] });
/** No other step but those at the end. */
const plain = balanced(leg, [5]);

describe("going down", () => {
  it("balances again where the cast asks for it, after the one at the start", () => {
    const steps = goingDown(only(balanced(leg, [5, 8, 12.5])));
    expect(toldBy(steps)[0]).toEqual(["going_down", "balance_again", 8]);
    expect(parametersIn(steps, "balance_again")).toEqual({
      depths_m: [8, 12.5],
      tolerance: leg.balance.balance_tolerance_delta_e00,
    });
    expect(codes(only(plain))).not.toContain("balance_again");
  });

  it("changes the filter where the legs meet, by as many stops as it is worth there", () => {
    const [bare, filtered] = flipped.legs;
    const depth_m = filtered.scene.min_depth_m;
    const change = goingDown(flipped).filter(({ code }) => code.startsWith("filter_"));
    expect(toldBy(change)).toEqual([["going_down", "filter_in", depth_m]]);
    expect(parametersIn(change, "filter_in")).toEqual({
      depth_m,
      stops: changeStops(bare, filtered),
      mount: "flip",
    });
    // The same legs, with the filter on above and off below.
    const swapped: Decisions = {
      ...flipped,
      legs: [
        { ...bare, filtered: true },
        { ...filtered, filtered: false },
      ],
    };
    expect(codes(swapped)).toContain("filter_out");
    expect(codes(swapped)).not.toContain("filter_in");
    expect(codes(reef).filter((code) => code.startsWith("filter_"))).toEqual([]);
  });

  it("opens up for the deep end where it is darker there by more than 0.3 stops (a judgement)", () => {
    const [first, last] = [startOf(reef.legs), endOf(reef.legs)];
    const stops = first.exposure_value_ev100.likely - last.exposure_value_ev100.likely;
    expect(stops).toBeGreaterThan(0.3);
    expect(toldBy(goingDown(only(plain))).slice(-1)).toEqual([["going_down", "deep_exposure", 18]]);
    expect(parametersIn(goingDown(reef), "deep_exposure")).toEqual({
      iso: last.iso,
      f_number: last.f_number,
      stops,
    });
    const darker = (by: number) =>
      only(
        exposed(plain, "deep", {
          exposure_value_ev100: estimate(first.exposure_value_ev100.likely - by),
        }),
      );
    expect(codes(darker(0.31))).toContain("deep_exposure");
    expect(codes(darker(0.29))).not.toContain("deep_exposure");
  });

  it("tells what is missing at a deep end that is too dark, and not how to open up", () => {
    const dark = only(exposed(plain, "deep", { verdict: "too_dark", shortfall_stops: estimate(1.5) }));
    expect(toldBy(goingDown(dark))).toEqual([["going_down", "too_dark", 18]]);
    expect(parametersIn(goingDown(dark), "too_dark")).toMatchObject({ shortfall_stops: 1.5 });
  });

  it("tells nothing of a deep end at a single depth: that was said at the start", () => {
    expect(endOf(decided(DARK_AND_GREEN).legs).verdict).toBe("too_dark");
    const single = goingDown(decided(DARK_AND_GREEN)).map(({ code }) => code);
    expect(single).not.toContain("too_dark");
    expect(codes(decided(daylightScene("IB", 45, 1.5)))).toEqual([]);
  });

  it("comes closer first where less than 30 % of the contrast is left at the deep end (a judgement)", () => {
    const hazy = (percent: number) =>
      goingDown(only(exposed(plain, "deep", { contrast_left_percent: estimate(percent) })));
    expect(toldBy(hazy(29)).slice(-1)).toEqual([["going_down", "come_close", 18]]);
    expect(parametersIn(hazy(29), "come_close")).toEqual({
      percent: 29,
      distance_m: reef.filmed.subject_distance_m,
    });
    expect(hazy(31).map(({ code }) => code)).not.toContain("come_close");
    const above = only(exposed(plain, "shallow", { contrast_left_percent: estimate(1) }));
    expect(codes(above)).not.toContain("come_close");
    // At a single depth there is no way down to do it on.
    const single = decided(daylightScene("IB", 45, 1.5));
    const near = exposed(single.legs[0], "deep", { contrast_left_percent: estimate(10) });
    expect(toldBy(goingDown({ ...single, legs: [near] }))).toEqual([["at_start", "come_close", 1.5]]);
  });
});
