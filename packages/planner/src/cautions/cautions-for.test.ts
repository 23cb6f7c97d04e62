import { atNight, daylightScene, TWO_LAMPS } from "@sunfathom/fixtures/scenes";
import { expect, it } from "vitest";
import { cautionsFor, cautionsIn, filterAdvice } from "./cautions-for.js";

const scene = daylightScene("IB", 45, 5);
const codes = (...asked: Parameters<typeof cautionsFor>) => cautionsFor(...asked).map(({ code }) => code);
const LIGHT = ["lamps_in_water_only", "lamps_not_into_eyes", "lamps_stay_on_rig", "batteries_by_maker"];
const reason = (code: string) => ({ code });

// Guards which caution comes with what: they are common practice, no published source.
it("every scene is told that this is no dive plan, and a bare one nothing else", () => {
  expect(codes(scene)).toEqual(["not_a_dive_planner"]);
});

it("a light brings its cautions, whether the caller has it or the answer advises it", () => {
  expect(codes({ ...scene, lamps: [TWO_LAMPS] })).toEqual(["not_a_dive_planner", ...LIGHT]);
  expect(codes(scene, { ways: [{ way: "lamp" }] })).toEqual([
    "not_a_dive_planner",
    "hover_to_balance",
    ...LIGHT,
  ]);
  expect(codes(scene, { reasons: [reason("night_there")] })).toEqual(["not_a_dive_planner", ...LIGHT]);
});

it("a place without daylight brings the caution for what has a roof", () => {
  expect(codes(atNight(scene))).toEqual(["not_a_dive_planner", "overhead_by_training"]);
});

it("what is mended by coming closer brings the caution for that; a doubt that is measured away does not", () => {
  expect(codes(scene, { reasons: [reason("haze_is_the_limit")] })).toEqual([
    "not_a_dive_planner",
    "closer_under_control",
  ]);
  expect(codes(scene, { uncertainty: [{ code: "path_scattering" }] })).toEqual(["not_a_dive_planner"]);
});

it("each is given once, in order, whatever says it first", () => {
  expect(
    codes(atNight(scene), { reasons: [reason("only_lamps_would_help")], advises: ["closer", "balance"] }),
  ).toEqual([
    "not_a_dive_planner",
    "overhead_by_training",
    "ascent_first",
    "hover_to_balance",
    "closer_under_control",
    ...LIGHT,
  ]);
  expect(
    cautionsIn(["filter_on_dry_land", "ascent_first", "filter_on_dry_land"]).map(({ code }) => code),
  ).toEqual(["ascent_first", "filter_on_dry_land"]);
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
  expect(codes(changed, { advises: [filterAdvice(changed)] })).toEqual(["not_a_dive_planner", said]);
  expect(codes(changed, {})).toEqual(["not_a_dive_planner"]);
});
