import { describe, expect, it } from "vitest";
import { distance, nearest } from "./nearest.js";

describe("distance", () => {
  // Kukich K. (1992), Techniques for automatically correcting words in text, ACM Computing Surveys 24(4), on the four
  // edits of Damerau F. J. (1964), CACM 7(3); kitten/sitting is the textbook pair; CA/ABC tells the restricted form
  // (3) from the unrestricted one (2).
  it.each([
    ["", "", 0],
    ["", "abc", 3],
    ["depth_m", "depth_m", 0],
    ["dept_m", "depth_m", 1],
    ["deepth_m", "depth_m", 1],
    ["dapth_m", "depth_m", 1],
    ["detph_m", "depth_m", 1],
    ["kitten", "sitting", 3],
    ["ca", "abc", 3],
  ])("from %j to %j: %i", (a, b, edits) => {
    expect(distance(a, b)).toBe(edits);
    expect(distance(b, a)).toBe(edits);
  });
});

describe("nearest", () => {
  const names = ["water_type", "depth_m", "min_depth_m", "max_depth_m", "iso", "wind_speed_m_s", "lamps"];
  it.each([
    ["dept_m", "depth_m"],
    ["depth", "depth_m"],
    ["dept", "depth_m"],
    ["dep", "depth_m"],
    ["win", "wind_speed_m_s"],
    ["iso", "iso"],
    ["depthM", "depth_m"],
    ["waterType", "water_type"],
    ["water", "water_type"],
    ["wind_speed", "wind_speed_m_s"],
    ["maxdepth_m", "max_depth_m"],
    ["ISO", "iso"],
    ["lamp", "lamps"],
  ])("takes %j for %j", (wrong, right) => {
    expect(nearest(wrong, names)).toBe(right);
  });

  it.each(["banana", "x", "de", "__proto__", "a".repeat(1000)])("takes %j for nothing", (wrong) => {
    expect(nearest(wrong, ["water_type", "depth_m", "lamps"])).toBeUndefined();
  });
});
