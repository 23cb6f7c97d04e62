import { describe, expect, it } from "vitest";
import { balanceProcedure } from "./balance-procedure.js";
import { mountingProcedure } from "./mounting-procedure.js";
import { filterMountingReasons as reasons } from "./reasons/filter-mounting.js";

describe("a reason on where a filter goes", () => {
  it("names the holder that was asked for, and the one to use", () => {
    expect(reasons.mount_asked_does_not_fit({ asked: "screw_on_lens", instead: "rear_sheet" })).toMatch(
      /screwed onto the lens.*sheet behind the lens/,
    );
  });

  it("says how a filter is changed in its place", () => {
    expect(reasons.mount_other_change({ allowed: "flip" })).toContain("swinging it on a hinge");
    expect(reasons.mount_other_change({ allowed: "clip_on" })).toContain("clipping it on");
  });

  it("names rings in the order in which they are screwed on", () => {
    const rings = [
      { id: "a", from_mm: 67, to_mm: 72 },
      { id: "b", from_mm: 72, to_mm: 82 },
    ];
    expect(reasons.rings_close({ rings, thickness_mm: 6 })).toContain(
      "a (67 to 72 mm), then b (72 to 82 mm).",
    );
  });

  it.each([
    ["thread", "ordinary filter"],
    ["sensor", "sensor"],
    ["window", "window"],
  ] as const)("says that the pupil's place is taken from the %s", (from, words) => {
    const said = reasons.pupil_distance_assumed({ distance_mm: 24, spread_percent: 20, from });
    expect(said).toContain(words);
  });
});

it("every step of a procedure can be read out as it stands", () => {
  const numbers = { depths_m: [5, 8], depth_m: 5, cct_K: 5600, distance_m: 2 };
  for (const step of [...Object.values(balanceProcedure), ...Object.values(mountingProcedure)])
    expect(step(numbers)).toMatch(/^[A-Z].*\.$/);
});

// What a sheet behind the lens asks for is common practice, no published source.
it.each([
  ["cut_practice", "lighting gel"],
  ["tape_on", "electrical contacts"],
  ["dry_land_only", "dry land only"],
  ["refocus", "focus"],
  ["sheet_set", "same density"],
  ["sheet_renew", "before each trip"],
] as const)("of a sheet it is said, under %s: %s", (code, words) => {
  expect(mountingProcedure[code]({})).toContain(words);
});
