// What goes on comes off, and what opens closes, in the steps down and up.

import { DARK_AND_GREEN, NIGHT_WRECK, OUTER_REEF_MORNING } from "@sunfathom/fixtures/scenes";
import { expect, it } from "vitest";
import { decided, FLIPPED, parametersIn, toldBy } from "../decided.test-support.js";
import { goingDown } from "./down.js";
import { atStart } from "./start.js";
import { comingUp } from "./up.js";

const codes = (steps: { code: string }[]) => steps.map(({ code }) => code);

it("the filter comes in and goes out at one depth, with settings for each side", () => {
  const d = decided(FLIPPED);
  const [down, up] = [goingDown(d), comingUp(d)];
  const [change] = toldBy(down).filter(([, code]) => code === "filter_in");
  const [back] = toldBy(up).filter(([, code]) => code === "filter_out");
  expect(change[2]).toBe(back[2]);
  const [on, off] = [parametersIn(down, "filter_in"), parametersIn(up, "filter_out")];
  const light = ({ iso, f_number }: typeof on) => Math.log2(Number(iso)) - 2 * Math.log2(Number(f_number));
  expect(light(on) - light(off)).toBeGreaterThan(1);
});

it("exposure opens to the deep end and closes to where it began", () => {
  const d = decided(OUTER_REEF_MORNING);
  const start = parametersIn(atStart(d), "start_exposure");
  // A card is shot after the exposure is set, on both ways.
  expect(codes(goingDown(d))).toEqual(["deep_exposure", "balance_again"]);
  expect(codes(comingUp(d))).toEqual(["shallow_exposure", "balance_again"]);
  const { iso, f_number, stops } = parametersIn(comingUp(d), "shallow_exposure");
  expect([iso, f_number]).toEqual([start["iso"], start["f_number"]]);
  expect(stops).toBeCloseTo(Number(parametersIn(goingDown(d), "deep_exposure")["stops"]), 9);
});

it("too little light is told once", () => {
  const d = decided(DARK_AND_GREEN);
  expect(codes(atStart(d))).toContain("too_dark");
  expect(codes(goingDown(d))).not.toContain("too_dark");
});

it("lamps that are lit go off before they leave the water", () => {
  expect(codes(comingUp(decided(NIGHT_WRECK)))).toContain("lamps_off_before_air");
});
