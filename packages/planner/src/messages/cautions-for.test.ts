import { expect, it } from "vitest";
import { daylightScene, TWO_LAMPS } from "../../../../test/support/scenes.js";
import { cautionsFor } from "./cautions-for.js";

const scene = daylightScene("IB", 45, 5);
const codes = (...asked: Parameters<typeof cautionsFor>) => cautionsFor(...asked).map(({ code }) => code);

// Guards which caution comes with what: they are common practice, no published source.
it("every scene is told that this is no dive plan, and a bare one nothing else", () => {
  expect(codes(scene)).toEqual(["not_a_dive_planner"]);
});

it("lamps bring theirs", () => {
  expect(codes({ ...scene, lamps: [TWO_LAMPS] })).toEqual([
    "not_a_dive_planner",
    "lamps_in_water_only",
    "lamps_not_into_eyes",
    "lamps_stay_on_rig",
  ]);
});

it.each([
  ["none", "filter_on_dry_land"],
  ["flip", "filter_flip_practised"],
  ["clip_on", "filter_flip_practised"],
] as const)("a filter in use, or advised, that changes under water by %s brings %s", (change, said) => {
  const changed = { ...scene, filter_change_underwater: change };
  expect(codes({ ...changed, filter_kind: "red", filter_density: 0.6 })).toEqual([
    "not_a_dive_planner",
    said,
  ]);
  // Known by its measured curve alone.
  const filter_transmittance = [400, 700].map((wavelength_nm) => ({ wavelength_nm, transmittance: 0.5 }));
  expect(codes({ ...changed, filter_transmittance })).toEqual(["not_a_dive_planner", said]);
  expect(codes(changed, { filterAdvised: true })).toEqual(["not_a_dive_planner", said]);
  expect(codes(changed, {})).toEqual(["not_a_dive_planner"]);
});
