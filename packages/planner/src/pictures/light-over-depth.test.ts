import {
  DARK_AND_GREEN,
  HARBOUR_WALL_AFTERNOON,
  NIGHT_WRECK,
  OUTER_REEF_MORNING,
} from "@sunfathom/fixtures/scenes";
import { GRID_SIZE } from "@sunfathom/optics";
import { describe, expect, it } from "vitest";
import { attenuation } from "../attenuation/attenuation.js";
import { bandLosses, LIGHTS } from "./bands-left.js";
import { lightOverDepth } from "./light-over-depth.js";

describe.each(Object.entries({ OUTER_REEF_MORNING, HARBOUR_WALL_AFTERNOON, DARK_AND_GREEN, NIGHT_WRECK }))(
  "light over depth, %s",
  (_, scene) => {
    const figures = lightOverDepth(scene);
    const answer = attenuation(scene);
    const { depths_m, left_percent } = figures;

    it("says of red and of the eye what the answer says, which works them out apart", () => {
      expect(figures.red_to_tenth_depth_m).toEqual(answer.red_to_tenth_depth_m);
      expect(figures.red_to_hundredth_depth_m).toEqual(answer.red_to_hundredth_depth_m);
      const { photopic_left_percent: eye } = answer.depths.at(-1) ?? answer.depths[0];
      expect(figures.left_at_max_percent.eye.likely).toBeCloseTo(eye.likely, 4);
      expect(figures.left_at_max_percent.eye.low).toBeCloseTo(eye.low, 4);
      expect(figures.left_at_max_percent.eye.high).toBeCloseTo(eye.high, 4);
    });

    it("begins with all of the light, and only loses", () => {
      for (const light of LIGHTS) {
        expect(left_percent[light][0]).toEqual({ low: 100, likely: 100, high: 100 });
        for (const [d, { low, likely, high }] of left_percent[light].entries()) {
          expect(low).toBeLessThanOrEqual(likely);
          expect(likely).toBeLessThanOrEqual(high);
          if (d > 0) expect(likely).toBeLessThan(left_percent[light][d - 1]?.likely ?? 0);
        }
      }
    });

    it("has red at a tenth and a hundredth where it says so", () => {
      const at = (depth_m: number): number => {
        const after = depths_m.findIndex((depth) => depth >= depth_m);
        const [low, high] = [after - 1, after].map((d) =>
          Math.log(left_percent.red[d]?.likely ?? Number.NaN),
        );
        const share =
          (depth_m - (depths_m[after - 1] ?? 0)) / ((depths_m[after] ?? 0) - (depths_m[after - 1] ?? 0));
        return Math.exp((low ?? 0) + share * ((high ?? 0) - (low ?? 0)));
      };
      expect(at(figures.red_to_tenth_depth_m.likely) / 10).toBeCloseTo(1, 1);
      expect(at(figures.red_to_hundredth_depth_m.likely)).toBeCloseTo(1, 1);
    });

    it("reaches beyond the dive and the end of red", () => {
      expect(depths_m.at(-1)).toBeGreaterThan(scene.max_depth_m);
      expect(depths_m.at(-1)).toBeGreaterThan(figures.red_to_hundredth_depth_m.likely);
    });
  },
);

describe("losses of bands", () => {
  it("follow Beer and Lambert in water that takes all alike", () => {
    const light = new Float64Array(GRID_SIZE).fill(2);
    const kd_per_m = new Float64Array(GRID_SIZE).fill(0.1);
    const losses = bandLosses(light, kd_per_m, [0, 10]);
    for (const name of LIGHTS) {
      expect(losses[name][0]).toBeCloseTo(0, 12);
      // 0.1 per metre over 10 m is e to the minus 1: 1.4427 stops.
      expect(losses[name][1]).toBeCloseTo(Math.LOG2E, 9);
    }
  });

  it("are numbers also where less is left than a number can say", () => {
    const light = new Float64Array(GRID_SIZE).fill(2);
    const kd_per_m = Float64Array.from(light, (_, i) => (i < GRID_SIZE / 2 ? 0.01 : 20));
    const { red, eye } = bandLosses(light, kd_per_m, [100]);
    expect(red[0]).toBeCloseTo(2000 * Math.LOG2E, 6);
    expect(eye[0]).toBeLessThan(10);
  });
});
