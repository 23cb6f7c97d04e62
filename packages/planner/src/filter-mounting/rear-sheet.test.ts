import { describe, expect, it } from "vitest";
import { filterMounting } from "./filter-mounting.js";
import { lensOf } from "./lens.js";
import { FISHEYE, sceneOf } from "./mounting-scenes.test-support.js";
import { portFigures } from "./port.js";
import { rearSheetOf, rearSheetReasons, sheetFarReasons } from "./rear-sheet.js";

const sheetOf = (changes: Parameters<typeof sceneOf>[0], ...without: Parameters<typeof sceneOf>[1][]) =>
  filterMounting(sceneOf({ holder: "rear_sheet", ...changes }, ...without)).rear_sheet!;

describe("sheet behind the lens", () => {
  it("moves focus by a third of its thickness at n = 1.5 (textbook, exact)", () => {
    expect(sheetOf({ sheet_thickness_mm: 0.12 }).focus_shift_mm).toBeCloseTo(0.04, 14);
    expect(sheetOf({ sheet_thickness_mm: 0.12 }).blur_if_not_refocused_mm).toBeCloseTo(0.04 / 8, 14);
  });

  it("is cut half a millimetre smaller than a slot, and 2 mm larger on each side than an opening it is taped over", () => {
    const opening = { rear_opening_width_mm: 28, rear_opening_height_mm: 20 };
    expect(sheetOf(opening)).toMatchObject({ cut_width_mm: 27.5, cut_height_mm: 19.5 });
    expect(sheetOf({ ...opening, rear_fixing: "tape" })).toMatchObject({
      cut_width_mm: 32,
      cut_height_mm: 24,
    });
    const unmeasured = filterMounting(FISHEYE);
    expect(unmeasured.rear_sheet!.cut_width_mm).toBeUndefined();
    expect(unmeasured.reasons.map(({ code }) => code)).toContain("sheet_measure_opening");
  });

  it("costs nothing far behind a dome: 16 mm with 0.1 mm reaches 7.7 m, and nothing appears beyond 4 radii", () => {
    const { focus, farthest_sharp_m } = sheetOf({});
    expect(focus).toBe("in_reach");
    expect(farthest_sharp_m).toBeUndefined();
  });

  it("ends sharpness at n (f + f^2 / shift) behind a flat port, hidden by depth of field or not", () => {
    // 16 mm, 0.1 mm: 1.34 * (16 + 256 / 0.03333) mm = 10.31 m; blur 0.0042 mm at f/8, allowed 43.3 / 1500.
    const thin = sheetOf({ port_kind: "flat" }, "dome_radius_mm");
    expect(thin.focus).toBe("within_depth_of_field");
    expect(thin.farthest_sharp_m).toBeCloseTo(10.313, 3);
    expect(thin.blur_allowed_mm).toBeCloseTo(43.3 / 1500, 12);
    const thick = filterMounting(
      sceneOf(
        { port_kind: "flat", holder: "rear_sheet", sheet_thickness_mm: 1, f_number: 4 },
        "dome_radius_mm",
      ),
    );
    expect(thick.rear_sheet!.focus).toBe("past_infinity_needed");
    expect(thick.verdict).toBe("fits_with_care");
    expect(thick.reasons.filter(({ code }) => code === "sheet_infinity_lost")).toHaveLength(1);
  });

  it("is not judged far behind a dome of unknown radius unless depth of field settles it", () => {
    expect(sheetOf({}, "dome_radius_mm").focus).toBe("within_depth_of_field");
    expect(sheetOf({ sheet_thickness_mm: 1, f_number: 2.8 }, "dome_radius_mm").focus).toBeUndefined();
  });
});

describe("where focus ends behind a dome", () => {
  const farthest = (changes: Parameters<typeof sceneOf>[0]) => {
    const scene = sceneOf({ sheet_thickness_mm: 3, sheet_refractive_index: 1.5, ...changes });
    return rearSheetOf(scene, lensOf(scene)).farthest_sharp_m;
  };

  it("is where the thing stands that the dome shows there: n / d + (n - 1) / R = 1 / i (textbook)", () => {
    // 16 mm with a shift of a millimetre: 16 + 256 mm from the pupil, so 162 mm in front of a dome of 110 mm.
    const distance_mm = 1.34 / (1 / 162 - 0.34 / 110);
    expect(farthest({ dome_radius_mm: 110 })).toBeCloseTo(distance_mm / 1000, 9);
  });

  it("is the dome itself where nothing nearer can appear", () => {
    expect(farthest({ dome_radius_mm: 280 })).toBe(0);
    expect(farthest({ dome_radius_mm: 271 })).toBeGreaterThan(0);
  });
});

describe("the reasons of a sheet", () => {
  const told = (changes: Parameters<typeof sceneOf>[0], ...without: Parameters<typeof sceneOf>[1][]) => {
    const scene = sceneOf({ holder: "rear_sheet", ...changes }, ...without);
    const lens = lensOf(scene);
    const sheet = rearSheetOf(scene, lens);
    const reasons = rearSheetReasons(sheet, portFigures(scene, lens));
    const parameters = (code: string) =>
      (reasons.find((reason) => reason.code === code)?.parameters ?? {}) as Readonly<Record<string, number>>;
    return { sheet, parameters, said: reasons.map(({ code, basis }) => `${code} ${basis}`) };
  };
  const opening = { rear_opening_width_mm: 28, rear_opening_height_mm: 20 };

  it("are its size where both sides of the opening are known, else that it is to be measured", () => {
    const { parameters, said } = told(opening);
    expect(said[0]).toBe("sheet_cut common_practice");
    expect(parameters("sheet_cut")).toEqual({ width_mm: 27.5, height_mm: 19.5 });
    for (const one of ["rear_opening_width_mm", "rear_opening_height_mm"] as const) {
      const { sheet, said: partly } = told(opening, one);
      expect(partly[0]).toBe("sheet_measure_opening common_practice");
      expect(sheet).not.toHaveProperty("cut_width_mm");
      expect(sheet).not.toHaveProperty("cut_height_mm");
    }
  });

  it("are its shift, and that all is in reach behind a dome of known radius", () => {
    const { sheet, parameters, said } = told({});
    expect(said.slice(1)).toEqual(["sheet_shifts_focus computed", "sheet_all_in_reach computed"]);
    expect(parameters("sheet_shifts_focus")).toEqual({
      shift_mm: sheet.focus_shift_mm,
      blur_mm: sheet.blur_if_not_refocused_mm,
      allowed_mm: sheet.blur_allowed_mm,
    });
    expect(parameters("sheet_all_in_reach")["from_centre_mm"]).toBeCloseTo(110 + 110 / 0.34, 8);
  });

  it("say nothing of all being in reach behind a dome where focus ends nearer than what it shows", () => {
    // 16 mm with a shift of a millimetre: 272 mm, and what is at infinity appears 434 mm from the centre of this dome.
    const lost = told({ sheet_thickness_mm: 3, f_number: 2.8 });
    expect(lost.sheet.focus).toBe("past_infinity_needed");
    expect(lost.said.slice(1)).toEqual(["sheet_shifts_focus computed"]);
    // A sixth of a millimetre: 1552 mm, where infinity appears 1970 mm from the centre; at f/22 depth of field hides it.
    const hidden = told({ dome_radius_mm: 500, sheet_thickness_mm: 0.5, f_number: 22 });
    expect(hidden.said.slice(1)).toEqual(["sheet_shifts_focus computed", "sheet_infinity_hidden computed"]);
  });

  it("are where focus ends, where depth of field hides it; what is lost is told as a fault", () => {
    const hidden = told({ port_kind: "flat" }, "dome_radius_mm");
    expect(hidden.said.slice(1)).toEqual(["sheet_shifts_focus computed", "sheet_infinity_hidden computed"]);
    expect(hidden.parameters("sheet_infinity_hidden")).toEqual({ farthest_m: hidden.sheet.farthest_sharp_m });
    const lost = told({ port_kind: "flat", sheet_thickness_mm: 1, f_number: 4 }, "dome_radius_mm");
    expect(lost.said.slice(1)).toEqual(["sheet_shifts_focus computed"]);
    const [fault, ...more] = sheetFarReasons(lost.sheet);
    expect(more).toEqual([]);
    expect([fault.code, fault.basis]).toEqual(["sheet_infinity_lost", "computed"]);
    expect(fault.parameters).toEqual({
      farthest_m: lost.sheet.farthest_sharp_m,
      blur_mm: lost.sheet.blur_if_not_refocused_mm,
    });
    // Behind a dome of unknown radius it is not known where focus ends.
    const unknown = told({}, "dome_radius_mm");
    expect(unknown.said.slice(1)).toEqual(["sheet_shifts_focus computed"]);
    expect(sheetFarReasons(unknown.sheet)).toEqual([]);
  });
});
