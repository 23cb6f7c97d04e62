// Guards where a grade or a gap becomes a fault: the edges are judgements of our own.
import { describe, expect, it } from "vitest";
import type { Vignetting, VignettingGrade } from "../result/filter-mounting.js";
import type { Front } from "./front.js";
import { closeReason, cornerFaults, cornerReason, domeFaults } from "./front-faults.js";

const estimate = (low: number, likely: number, high: number) => ({ low, likely, high });
const bare: Front = {
  pupil: { distance_mm: estimate(18, 20, 22), assumed: false, from: "thread", spread_percent: 10 },
  clear_diameter_needed_mm: estimate(60, 66, 72),
};
const withCorners = (grade: VignettingGrade, light_percent = estimate(60, 70, 80)): Front => {
  const vignetting: Vignetting = {
    pupil_distance_mm: bare.pupil.distance_mm,
    pupil_distance_assumed: false,
    corner_half_field_deg: 42,
    clear_half_field_deg: estimate(38, 40, 41),
    corner_light_percent: light_percent,
    grade,
  };
  return { ...bare, vignetting };
};

describe("room behind a dome", () => {
  const faults = (low: number, likely: number) =>
    domeFaults({ ...bare, dome_clearance_mm: estimate(low, likely, likely + 3) }).map(
      ({ fatal, reason: { code, basis, parameters } }) => [fatal, `${code} ${basis}`, parameters],
    );
  const gap = (clearance_mm: number) => ({ clearance_mm });

  it("is fatal where there is likely none, asks for care below 3 mm at its least, and is no fault beyond", () => {
    expect(faults(-4, -1)).toEqual([[true, "mount_hits_dome computed", gap(-1)]]);
    expect(faults(-3, 0)).toEqual([[true, "mount_hits_dome computed", gap(0)]]);
    expect(faults(-1, 0.5)).toEqual([[false, "mount_near_dome judgement", gap(0.5)]]);
    expect(faults(2.9, 6)).toEqual([[false, "mount_near_dome judgement", gap(6)]]);
    expect(faults(3, 6)).toEqual([]);
    expect(domeFaults(bare)).toEqual([]);
  });
});

describe("corners", () => {
  it("are a fault where dark, or where they may be; in doubt where nothing is known; a fatal one where black, unless at best less than a stop is lost", () => {
    const faults = (front: Front) => cornerFaults(front).map(({ fatal, reason: { code } }) => [fatal, code]);
    expect(faults(bare)).toEqual([[false, "corners_unknown"]]);
    for (const grade of ["clear", "slight"] as const) {
      expect(faults(withCorners(grade))).toEqual([]);
      expect(faults(withCorners(grade, estimate(0, 90, 100)))).toEqual([[false, "corners_close"]]);
    }
    expect(faults(withCorners("dark"))).toEqual([[false, "corners_dark"]]);
    expect(faults(withCorners("black", estimate(0, 0, 50)))).toEqual([[false, "corners_black"]]);
    expect(faults(withCorners("black", estimate(0, 0, 49.9)))).toEqual([[true, "corners_black"]]);
    expect(faults(withCorners("black", estimate(0, 0, 0)))).toEqual([[true, "corners_black"]]);
  });

  it.each([
    ["clear", { light_percent: 70, clear_half_deg: 40, corner_half_deg: 42 }],
    ["slight", { light_percent: 70, clear_half_deg: 40 }],
    ["dark", { light_percent: 70, clear_half_deg: 40, corner_half_deg: 42 }],
    ["black", { clear_half_deg: 40, corner_half_deg: 42, clear_diameter_needed_mm: 66 }],
  ] as const)("that are %s are told as such, with what is likely", (grade, parameters) => {
    const said = cornerReason(withCorners(grade));
    expect([said.code, said.basis]).toEqual([
      `corners_${grade}`,
      // That it hardly shows is nobody's formula.
      grade === "slight" ? "judgement" : "computed",
    ]);
    expect(said.parameters).toEqual(parameters);
  });

  it("of a filter of unknown size are told by the clear diameter that they need", () => {
    const said = cornerReason(bare);
    expect([said.code, said.basis, said.parameters]).toEqual([
      "corners_unknown",
      "computed",
      { clear_diameter_needed_mm: 66 },
    ]);
  });

  it("that do, but may lose more than a stop, are told with the diameter that is safe", () => {
    const close = (grade: VignettingGrade, least: number) =>
      closeReason(withCorners(grade, estimate(least, 90, 100)));
    for (const grade of ["clear", "slight"] as const) {
      const [said, ...more] = close(grade, 49.9);
      expect(more).toEqual([]);
      expect([said.code, said.basis, said.parameters]).toEqual([
        "corners_close",
        "computed",
        { least_light_percent: 49.9, clear_diameter_safe_mm: 72 },
      ]);
      expect(close(grade, 50)).toEqual([]);
    }
    for (const grade of ["dark", "black"] as const) expect(close(grade, 10)).toEqual([]);
    expect(closeReason(bare)).toEqual([]);
  });
});
