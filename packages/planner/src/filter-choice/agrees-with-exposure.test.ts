// Filter choice and exposure loss meter the same light: no filter is advised behind which the subject is too dark.

import { daylightScene } from "@sunfathom/fixtures/scenes";
import fc from "fast-check";
import { expect, it } from "vitest";
import { exposureLoss } from "../exposure-loss/exposure-loss.js";
import type { Scene } from "../scene/scene.js";
import { filterChoice } from "./filter-choice.js";

/** A click of the dial. */
const CLICK_STOPS = 1 / 3;

const scenes = fc
  .record({
    type: fc.constantFrom("I", "IB", "III", "1C", "3C", "5C", "7C", "9C"),
    sun_deg: fc.integer({ min: 10, max: 80 }),
    depth_m: fc.integer({ min: 1, max: 16 }),
    subject_distance_m: fc.integer({ min: 3, max: 40 }).map((dm) => dm / 10),
    max_iso: fc.constantFrom(400, 1600, 6400),
  })
  .map(
    ({ type, sun_deg, depth_m, ...camera }): Scene => ({
      ...daylightScene(type, sun_deg, depth_m),
      ...camera,
    }),
  );

it("advises no filter behind which the exposure is short by more than a click", () => {
  let advised = 0;
  fc.assert(
    fc.property(scenes, (scene) => {
      const { filter_kind, filter_density } = filterChoice(scene);
      if (filter_kind === "none" || filter_density === undefined) return;
      advised++;
      const [{ shortfall_stops }] = exposureLoss({ ...scene, filter_kind, filter_density }).depths;
      expect(shortfall_stops?.likely ?? 0).toBeLessThan(CLICK_STOPS);
    }),
    { seed: 7, numRuns: 40 },
  );
  expect(advised).toBeGreaterThan(10);
});
