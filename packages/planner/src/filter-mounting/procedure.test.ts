// What is done in which order is common practice, no published source.
import { expect, it } from "vitest";
import { filterMounting } from "./filter-mounting.js";
import { ACTION_CAMERA, COMPACT, FISHEYE, sceneOf, WIDE_ZOOM } from "./mounting-scenes.test-support.js";

const steps = (scene: typeof WIDE_ZOOM) => filterMounting(scene).procedure.map(({ code }) => code);
const rings = [{ id: "a", from_mm: 67, to_mm: 77, thickness_mm: 2 }];

it.each([
  ["slot", "slide_in"],
  ["tape", "tape_on"],
] as const)(
  "behind the lens, by %s: practised, cut, fixed, on dry land, focused anew, and looked after",
  (rear_fixing, fixed) => {
    expect(steps({ ...FISHEYE, rear_fixing })).toEqual([
      "cut_practice",
      "cut_sheet",
      fixed,
      "dry_land_only",
      "refocus",
      "sheet_set",
      "sheet_renew",
      ...(rear_fixing === "tape" ? ["tape_renew"] : []),
    ]);
  },
);

it("on the lens: rings first where there are any, then a picture of a wall, clear of the port, on dry land", () => {
  const plain = ["wall_test", "clear_of_port", "dry_land_only"];
  expect(steps(WIDE_ZOOM)).toEqual(plain);
  const chained = sceneOf({ focal_length_mm: 24, lens_thread_mm: 67, holder: "screw_on_lens", rings });
  expect(steps(chained)).toEqual(["chain_assemble", ...plain]);
});

it("before port or window: tethered, without bubbles, rinsed, and practised where it changes under water", () => {
  const fixed = ["wall_test", "tether", "no_grit", "no_bubbles", "rinse"];
  expect(steps(ACTION_CAMERA)).toEqual(fixed);
  expect(steps(COMPACT)).toEqual(fixed);
  expect(steps({ ...COMPACT, filter_thread_mm: 77, rings })).toEqual(["chain_assemble", ...fixed]);
  expect(steps({ ...COMPACT, filter_change_underwater: "flip" })).toEqual([
    ...fixed.slice(0, 4),
    "change_practised",
    "rinse",
  ]);
});
