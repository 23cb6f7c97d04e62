import { expect, it } from "vitest";
import { BRIGHT_REEF, DARK_AND_GREEN, daylightScene } from "../../../../test/support/scenes.js";
import { exposureLoss } from "../exposure-loss/exposure-loss.js";
import { tooBright } from "./too-bright.js";

const [bright] = exposureLoss({ ...BRIGHT_REEF, max_f_number: 32 }).depths;

it("too much light is told with the density that takes it, and the aperture that would do instead", () => {
  const stops = bright.excess_stops?.likely ?? Number.NaN;
  const told = tooBright(bright);
  expect(told?.depth_m).toBe(5);
  expect(told?.excess_stops).toBe(stops);
  // A stop is a density of log10 2, and the root of two in the f-number.
  expect(told?.density).toBeCloseTo(stops * Math.log10(2), 9);
  expect(told?.f_number).toBeCloseTo(5.6 * 2 ** (stops / 2), 9);
});

it("no aperture is told of a lens that closes no further, or not far enough", () => {
  for (const max_f_number of [5.6, 5.7]) {
    const told = tooBright(exposureLoss({ ...BRIGHT_REEF, max_f_number }).depths[0]);
    expect(told?.density).toBeGreaterThan(0);
    expect(told).not.toHaveProperty("f_number");
  }
});

it("nothing is told where the light fits, or is short", () => {
  for (const scene of [daylightScene("IB", 45, 8), DARK_AND_GREEN]) {
    expect(tooBright(exposureLoss(scene).depths[0])).toBeUndefined();
  }
  // Both numbers belong together.
  for (const part of ["excess_stops", "neutral_density_needed"] as const) {
    const { [part]: _, ...rest } = bright;
    expect(tooBright(rest)).toBeUndefined();
  }
});
