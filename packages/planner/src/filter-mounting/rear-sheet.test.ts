import { describe, expect, it } from "vitest";
import { filterMounting } from "./filter-mounting.js";
import { FISHEYE, sceneOf } from "./mounting-scenes.test-support.js";

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
