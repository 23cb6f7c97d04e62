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
    expect([answer.holder, answer.place, answer.verdict]).toEqual(["screw_on_lens", "on_lens", "fits"]);
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
    ["a lens thread", WIDE_ZOOM, "built to take one ordinary filter"],
    ["the sensor", { ...COMPACT, holder: "screw_on_port" as const }, "size of the picture on the sensor"],
    ["a small camera's window", ACTION_CAMERA, "behind the window"],
  ])("and says that the pupil's place is taken from %s", (_, scene, words) => {
    const said = filterMounting(scene).reasons.find(({ code }) => code === "pupil_distance_assumed");
    expect(said?.text).toContain(words);
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
      sceneOf({ entrance_pupil_distance_mm: 25, dome_radius_mm: 80, holder: "screw_on_lens" }),
    );
    expect(roomy.dome_clearance_mm!.likely).toBeCloseTo(80 - Math.hypot(30, 40), 10);
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

describe("what goes with it", () => {
  it("says for a sheet: practice cut, no tape on contacts, dry land, focus anew, matched set, renewal, dust", () => {
    const answer = filterMounting({ ...FISHEYE, rear_fixing: "tape" });
    const said = answer.procedure.join(" ");
    for (const words of [
      "lighting gel",
      "electrical contacts",
      "mount",
      "dry land only",
      "Focus anew",
      "same density",
      "before each trip",
    ]) {
      expect(said).toContain(words);
    }
    expect(answer.procedure[0]).toContain("Practise the cut");
    expect(cautions(answer)).toContain("mount_sensor_dust");
  });

  it("marks what is practice as practice and what is computed as computed", () => {
    const answer = filterMounting(WIDE_ZOOM);
    const basis = Object.fromEntries(answer.reasons.map((entry) => [entry.code, entry.basis]));
    expect(basis["mount_on_lens"]).toBe("common_practice");
    expect(basis["pupil_distance_assumed"]).toBe("common_practice");
    expect(basis["corners_clear"]).toBe("computed");
    expect(basis["dome_brings_near"]).toBe("computed");
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
