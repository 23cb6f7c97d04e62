// What is assumed of lenses is from memory; these guard where each assumption is made, worked by hand.
import { expect, it } from "vitest";
import { lensOf } from "./lens.js";
import { ACTION_CAMERA, COMPACT, FISHEYE, sceneOf, WIDE_ZOOM } from "./mounting-scenes.test-support.js";
import { pupilDistance } from "./pupil-distance.js";

const of = (scene: typeof WIDE_ZOOM, place: Parameters<typeof pupilDistance>[2] = "on_lens") =>
  pupilDistance(scene, lensOf(scene), place);

it("from its thread: 0.7 of where the bare thread halves the corner's light, 0.5 for longer lenses", () => {
  // Thread 77 mm, corner at tan w = 21.65 / 16.
  const halves_mm = 38.5 / (21.65 / 16);
  const wide = of(WIDE_ZOOM);
  expect(wide.distance_mm.likely).toBeCloseTo(0.7 * halves_mm, 8);
  expect(wide.distance_mm.low).toBeCloseTo(0.8 * 0.7 * halves_mm, 8);
  expect(wide.distance_mm.high).toBeCloseTo(1.2 * 0.7 * halves_mm, 8);
  expect(wide).toMatchObject({ assumed: true, from: "thread" });
  expect(wide.spread_percent).toBeCloseTo(20, 8);
  expect(of(sceneOf({ lens_kind: "standard" })).distance_mm.likely).toBeCloseTo(0.5 * halves_mm, 8);
});

it.each([
  ["wide", sceneOf({}, "lens_thread_mm"), 0.55 * 43.3],
  ["standard", sceneOf({ lens_kind: "standard" }, "lens_thread_mm"), 0.7 * 43.3],
  ["fisheye", FISHEYE, 0.35 * 43.3],
  ["fisheye with a thread", { ...FISHEYE, lens_thread_mm: 77 }, 0.35 * 43.3],
])("of a %s lens where no thread tells: a share of the picture's diagonal", (_kind, scene, distance_mm) => {
  expect(of(scene).from).toBe("sensor");
  expect(of(scene).distance_mm.likely).toBeCloseTo(distance_mm, 6);
});

it("of an action camera: 5 mm behind its window", () => {
  const { distance_mm, from, assumed } = of(ACTION_CAMERA, "before_window");
  expect([distance_mm, from, assumed]).toEqual([{ low: 4, likely: 5, high: 6 }, "window", true]);
});

it("as given, to a tenth; before a flat port 15 mm more, whose doubt adds as independent ones do", () => {
  const given = { ...COMPACT, entrance_pupil_distance_mm: 20 };
  expect(of(given)).toMatchObject({
    distance_mm: { low: 18, likely: 20, high: 22 },
    assumed: false,
    spread_percent: 10,
  });
  const before = of(given, "before_port");
  const spread_mm = Math.hypot(2, 3);
  expect(before.distance_mm.likely).toBe(35);
  expect(before.distance_mm.high).toBeCloseTo(35 + spread_mm, 9);
  expect(before.distance_mm.low).toBeCloseTo(35 - spread_mm, 9);
  expect(before.spread_percent).toBeCloseTo((100 * spread_mm) / 35, 9);
});
