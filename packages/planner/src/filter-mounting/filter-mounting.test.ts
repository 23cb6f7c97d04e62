import { describe, expect, it } from "vitest";
import { models } from "../reference/models.js";
import type { FilterMountingAnswer } from "../result/filter-mounting.js";
import { filterMounting } from "./filter-mounting.js";
import { ACTION_CAMERA, COMPACT, FISHEYE, sceneOf, WIDE_ZOOM } from "./mounting-scenes.test-support.js";

const codes = ({ reasons }: FilterMountingAnswer) => reasons.map(({ code }) => code);
const cautions = (answer: FilterMountingAnswer) => answer.cautions.map(({ code }) => code);
const verdictOf = (answer: FilterMountingAnswer, holder: string) =>
  answer.options.find((option) => option.holder === holder)!.verdict;

// Where filters go is common practice of the trade, no published source.
describe("where the filter goes", () => {
  it("onto a wide lens's own thread inside a dome housing, changed on dry land only", () => {
    const answer = filterMounting(WIDE_ZOOM);
    expect([answer.holder, answer.place, answer.verdict]).toEqual([
      "screw_on_lens",
      "on_lens",
      "fits_with_care",
    ]);
    expect(answer.filter_change_underwater).toBe("none");
    expect(answer.vignetting!.grade).toBe("clear");
    expect(cautions(answer)).toContain("filter_on_dry_land");
    expect(codes(answer)).toContain("dome_brings_near");
  });

  it("behind a fisheye, whose front bulges, even if a clip to change at depth was asked for", () => {
    const answer = filterMounting({ ...FISHEYE, holder: "clip_on", filter_change_underwater: "clip_on" });
    expect([answer.holder, answer.place]).toEqual(["rear_sheet", "behind_lens"]);
    expect(answer.verdict).toBe("fits_with_care");
    expect(codes(answer).slice(0, 2)).toEqual(["mount_asked_does_not_fit", "mount_not_before_dome"]);
    expect(codes(answer)).toContain("mount_fixed_for_dive");
    expect(verdictOf(answer, "screw_on_lens")).toBe("does_not_fit");
    expect(answer.vignetting).toBeUndefined();
    expect(answer.uncertainty).toEqual([]);
  });

  it("in a flip holder on a flat port where the filter is to be changed at depth", () => {
    const answer = filterMounting({ ...COMPACT, filter_change_underwater: "flip" });
    expect([answer.holder, answer.place, answer.verdict]).toEqual(["flip", "before_port", "fits"]);
    expect(answer.filter_change_underwater).toBe("flip");
    expect(cautions(answer)).toContain("filter_flip_practised");
    expect(cautions(answer)).not.toContain("filter_on_dry_land");
    expect(verdictOf(answer, "rear_sheet")).toBe("does_not_fit");
    expect(verdictOf(answer, "clip_on")).toBe("fits_with_care");
  });

  it("with care, where it is not known what a flip holder seats on", () => {
    const { port_thread_mm: _, ...unknown } = COMPACT;
    const answer = filterMounting({ ...unknown, filter_change_underwater: "flip", holder: "flip" });
    expect(verdictOf(answer, "flip")).toBe("fits_with_care");
    expect(codes(answer)).toContain("mount_flip_seat_unknown");
  });

  it("with care behind a dome whose radius is not given: neither its room nor where focus ends is known", () => {
    const screwed = filterMounting(sceneOf({ holder: "screw_on_lens" }, "dome_radius_mm"));
    expect(verdictOf(screwed, "screw_on_lens")).toBe("fits_with_care");
    expect(codes(screwed)).toContain("mount_dome_room_unknown");
    const sheet = filterMounting(
      sceneOf({ holder: "rear_sheet", sheet_thickness_mm: 1, f_number: 2.8 }, "dome_radius_mm"),
    );
    expect(verdictOf(sheet, "rear_sheet")).toBe("fits_with_care");
    expect(codes(sheet)).toContain("sheet_focus_unknown");
  });

  it.each([
    ["a lens thread", WIDE_ZOOM, "thread"],
    ["the sensor", { ...COMPACT, holder: "screw_on_port" as const }, "sensor"],
    ["a small camera's window", ACTION_CAMERA, "window"],
  ])("and says that the pupil's place is taken from %s", (_, scene, from) => {
    const said = filterMounting(scene).reasons.find(({ code }) => code === "pupil_distance_assumed");
    expect(said?.parameters).toMatchObject({ from });
  });

  it("in a frame over an action camera's window, with the clear diameter that it needs", () => {
    const answer = filterMounting(ACTION_CAMERA);
    expect([answer.holder, answer.place, answer.verdict]).toEqual(["action_camera", "before_window", "fits"]);
    expect(answer.vignetting).toBeUndefined();
    expect(codes(answer)).toContain("corners_unknown");
    expect(answer.clear_diameter_needed_mm!.likely).toBeGreaterThan(25);
    expect(cautions(answer)).toContain("mount_flat_port_edges");
    expect(verdictOf(answer, "rear_sheet")).toBe("does_not_fit");
  });

  it("nowhere, where nothing fits, and says so about what was asked", () => {
    const answer = filterMounting(
      sceneOf({ lens_interchangeable: false, holder: "screw_on_lens" }, "lens_thread_mm"),
    );
    expect([answer.holder, answer.verdict]).toEqual(["screw_on_lens", "does_not_fit"]);
    expect(codes(answer).slice(0, 2)).toEqual(["mount_nothing_fits", "mount_lens_without_thread"]);
  });

  it("not between a big filter and a small dome that it would touch", () => {
    // Entrance pupil in the centre of a 45 mm dome, rim of radius 40 mm about 24 mm in front of it: hypot 46.9 > 45.
    const answer = filterMounting(sceneOf({ dome_radius_mm: 45, holder: "screw_on_lens" }));
    expect(answer.holder).toBe("rear_sheet");
    expect(codes(answer).slice(0, 2)).toEqual(["mount_asked_does_not_fit", "mount_hits_dome"]);
    const roomy = filterMounting(
      sceneOf({ entrance_pupil_distance_mm: 22, dome_radius_mm: 80, holder: "screw_on_lens" }),
    );
    expect(roomy.dome_clearance_mm!.likely).toBeCloseTo(80 - Math.hypot(27, 40), 10);
  });

  it("behind the lens where rim and rings cut the corners off wherever the pupil lies", () => {
    const thick = [{ id: "tube", from_mm: 77, to_mm: 62, thickness_mm: 12 }];
    const answer = filterMounting(
      sceneOf({ rings: thick, filter_thread_mm: 62, lens_thread_mm: 77, entrance_pupil_distance_mm: 24 }),
    );
    expect(answer.holder).toBe("rear_sheet");
    expect(verdictOf(answer, "screw_on_lens")).toBe("does_not_fit");
  });
});

describe("why it goes there", () => {
  it("is told in this order: its merit, the corners, what is assumed, what the port does; once", () => {
    const onLens = [
      "mount_on_lens",
      "corners_close",
      "rings_not_needed",
      "corners_clear",
      "pupil_distance_assumed",
      "corners_test",
      "ghosts_inside",
      "dome_keeps_field",
      "dome_brings_near",
    ];
    expect(codes(filterMounting(WIDE_ZOOM))).toEqual(onLens);
    // Who asks for what is best is told nothing else.
    expect(codes(filterMounting({ ...WIDE_ZOOM, holder: "screw_on_lens" }))).toEqual(onLens);
    expect(codes(filterMounting({ ...WIDE_ZOOM, entrance_pupil_distance_mm: 25 }))).not.toContain(
      "pupil_distance_assumed",
    );
    expect(codes(filterMounting(FISHEYE))).toEqual([
      "mount_behind_lens",
      "sheet_measure_opening",
      "sheet_shifts_focus",
      "sheet_all_in_reach",
      "dome_keeps_field",
      "dome_brings_near",
    ]);
  });

  it("tells of the corners once, as a fault or beside another", () => {
    // The ray to the corner passes 25 mm * 21.65 / 16 = 33.8 mm from the axis: an opening of 33.5 mm takes more than half of it.
    const dark = sceneOf({
      lens_interchangeable: false,
      filter_clear_diameter_mm: 67,
      entrance_pupil_distance_mm: 20,
    });
    expect(codes(filterMounting(dark)).filter((code) => code.startsWith("corners_"))).toEqual([
      "corners_dark",
      "corners_test",
    ]);
    expect(filterMounting(dark).verdict).toBe("fits_with_care");
    const doubted = filterMounting(
      sceneOf({ holder: "screw_on_lens", focal_length_mm: 24 }, "dome_radius_mm"),
    );
    expect(codes(doubted).slice(0, 2)).toEqual(["mount_on_lens", "mount_dome_room_unknown"]);
    expect(codes(doubted)).toContain("corners_clear");
  });

  it("tells of what was asked for the gravest fault alone, with both names, and then of what is advised", () => {
    const answer = filterMounting(
      sceneOf({ dome_radius_mm: 45, holder: "screw_on_lens", filter_change_underwater: "flip" }),
    );
    expect(codes(answer).slice(0, 4)).toEqual([
      "mount_asked_does_not_fit",
      "mount_hits_dome",
      "mount_behind_lens",
      "mount_fixed_for_dive",
    ]);
    expect(codes(answer).filter((code) => code === "mount_fixed_for_dive")).toHaveLength(1);
    const [refused] = answer.reasons;
    expect(refused.basis).toBe("computed");
    expect(refused.parameters).toEqual({ asked: "screw_on_lens", instead: "rear_sheet" });
  });

  it("is told where nothing fits of what was asked, whatever would be tried first, and nothing for it", () => {
    const nothing = (holder?: "clip_on") =>
      filterMounting(
        sceneOf({ lens_interchangeable: false, ...(holder ? { holder } : {}) }, "lens_thread_mm"),
      );
    const asked = nothing("clip_on");
    expect([asked.holder, asked.verdict]).toEqual(["clip_on", "does_not_fit"]);
    expect(asked.reasons.slice(0, 3).map(({ code, basis }) => [code, basis])).toEqual([
      ["mount_nothing_fits", "computed"],
      ["mount_not_before_dome", "common_practice"],
      ["dome_keeps_field", "computed"],
    ]);
    expect(nothing().holder).toBe(nothing().options[0].holder);
  });
});

describe("what goes with it", () => {
  it("is rings and corners for what is screwed on, and a sheet for what goes behind the lens, with their sources", () => {
    const rings = [{ id: "a", from_mm: 67, to_mm: 77, thickness_mm: 2 }];
    const chained = filterMounting(
      sceneOf({ focal_length_mm: 24, lens_thread_mm: 67, rings, holder: "screw_on_lens" }),
    );
    expect(chained.ring_chain?.rings).toEqual(rings);
    expect(chained.vignetting).toBeDefined();
    expect(chained).not.toHaveProperty("rear_sheet");
    expect(chained.sources).toEqual([
      "ports",
      "vignetting",
      "gap_and_weight",
      "ring_chain",
      "mounting_practice",
    ]);
    expect(chained.uncertainty.map(({ code, share }) => [code, share])).toEqual([["pupil_distance", 1]]);
    const sheet = filterMounting(FISHEYE);
    expect(sheet.rear_sheet?.focus_shift_mm).toBeCloseTo(0.1 / 3, 12);
    expect(sheet).not.toHaveProperty("ring_chain");
    expect(sheet.sources).toEqual(["ports", "rear_sheet", "mounting_practice"]);
    const clip = filterMounting({ ...COMPACT, filter_change_underwater: "clip_on" });
    expect(clip.sources).toEqual(["ports", "vignetting", "gap_and_weight", "mounting_practice"]);
  });

  it("is what to beware of: what is changed on land alone, practised, or lets dust in, and a flat port's edges", () => {
    const always = ["not_a_dive_planner", "mount_makers_instructions"];
    expect(cautions(filterMounting(WIDE_ZOOM))).toEqual([...always, "filter_on_dry_land"]);
    expect(cautions(filterMounting(FISHEYE))).toEqual([...always, "filter_on_dry_land", "mount_sensor_dust"]);
    // In the water it is taken off to let the air out, also where it stays on for the dive.
    expect(cautions(filterMounting(COMPACT))).toEqual([...always, "filter_flip_practised"]);
    expect(cautions(filterMounting({ ...COMPACT, filter_change_underwater: "flip" }))).toEqual([
      ...always,
      "filter_flip_practised",
    ]);
    // Beyond a field of 90 degrees in air (common practice, no published source).
    const flat = (field_of_view_deg: number) =>
      cautions(
        filterMounting(
          sceneOf({ port_kind: "flat", field_of_view_deg }, "focal_length_mm", "dome_radius_mm"),
        ),
      );
    expect(flat(90)).not.toContain("mount_flat_port_edges");
    expect(flat(91)).toContain("mount_flat_port_edges");
  });

  it("says for a sheet: practice cut, no tape on contacts, dry land, focus anew, matched set, renewal, dust", () => {
    const answer = filterMounting({ ...FISHEYE, rear_fixing: "tape" });
    expect(answer.procedure.map(({ code }) => code)).toEqual([
      "cut_practice",
      "cut_sheet",
      "tape_on",
      "dry_land_only",
      "refocus",
      "sheet_set",
      "sheet_renew",
      "tape_renew",
    ]);
    expect(cautions(answer)).toContain("mount_sensor_dust");
  });

  it("marks what is practice as practice and what is computed as computed", () => {
    const answer = filterMounting(WIDE_ZOOM);
    const basis = Object.fromEntries(answer.reasons.map((entry) => [entry.code, entry.basis]));
    expect(basis["mount_on_lens"]).toBe("common_practice");
    expect(basis["pupil_distance_assumed"]).toBe("judgement");
    expect(basis["corners_clear"]).toBe("computed");
    expect(basis["dome_brings_near"]).toBe("computed");
    expect(basis["corners_test"]).toBe("common_practice");
  });

  it("names only sources that the list of models holds, and no reason twice", () => {
    const known = models().map(({ id }) => id);
    for (const scene of [WIDE_ZOOM, FISHEYE, COMPACT, ACTION_CAMERA]) {
      const answer = filterMounting(scene);
      for (const source of answer.sources) expect(known).toContain(source);
      expect(new Set(codes(answer)).size).toBe(answer.reasons.length);
      expect(new Set(answer.options.map(({ holder }) => holder)).size).toBe(6);
    }
  });
});
