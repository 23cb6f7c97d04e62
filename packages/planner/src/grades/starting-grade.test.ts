import { daylightScene, HARBOUR_WALL_AFTERNOON, OUTER_REEF_MORNING } from "@sunfathom/fixtures/scenes";
import { describe, expect, it } from "vitest";
import { startingGrade } from "./starting-grade.js";

const red = { filter_kind: "red", filter_density: 1.2 } as const;

describe("a starting grade", () => {
  it("is for the middle of the filmed depths and the filter on the lens, and holds around it", () => {
    const grade = startingGrade({ ...OUTER_REEF_MORNING, ...red });
    expect(grade).toMatchObject({
      depth_m: 11.5,
      filter: { kind: "red", density: 1.2 },
      finish: "basic_edit",
    });
    expect(grade.holds_min_depth_m).toBeLessThanOrEqual(11.5);
    expect(grade.holds_max_depth_m).toBeGreaterThanOrEqual(11.5);
    expect(grade.holds_max_depth_m - grade.holds_min_depth_m).toBeLessThan(20);
    expect(startingGrade(OUTER_REEF_MORNING).filter).toEqual({ kind: "none" });
  });

  it("betters the colours, a fitted one more than sliders", () => {
    for (const scene of [OUTER_REEF_MORNING, HARBOUR_WALL_AFTERNOON]) {
      const [sliders, fitted] = (["basic_edit", "matched"] as const).map((finish) =>
        startingGrade({ ...scene, finish }),
      );
      if (!sliders || !fitted) throw new Error("no grade");
      expect(sliders.delta_e00).toBeLessThan(sliders.without_delta_e00);
      expect(fitted.delta_e00).toBeLessThan(sliders.delta_e00);
    }
  });

  it("says how much red there is: all of it in the shallows, none far down", () => {
    expect(startingGrade(daylightScene("IB", 60, 1)).red).toBe("excellent");
    expect(startingGrade(daylightScene("IB", 60, 90)).red).toBe("gone");
  });
});
