import { describe, expect, it } from "vitest";
import { balanceProcedure } from "./balance-procedure.js";
import { mountingProcedure } from "./mounting-procedure.js";
import { filterMountingReasons as reasons } from "./reasons/filter-mounting.js";

describe("a reason on where a filter goes", () => {
  it("names the holder that was asked for, and the one to use", () => {
    const said = (asked: "screw_on_lens" | "flip", instead: "rear_sheet" | "screw_on_lens") =>
      reasons.mount_asked_does_not_fit({ asked, instead });
    const texts = [
      said("screw_on_lens", "rear_sheet"),
      said("flip", "rear_sheet"),
      said("flip", "screw_on_lens"),
    ];
    expect(new Set(texts)).toHaveLength(3);
  });

  it("says how a filter is changed in its place", () => {
    expect(reasons.mount_other_change({ allowed: "flip" })).not.toBe(
      reasons.mount_other_change({ allowed: "clip_on" }),
    );
  });

  it("names rings in the order in which they are screwed on", () => {
    const rings = [
      { id: "a", from_mm: 67, to_mm: 72 },
      { id: "b", from_mm: 72, to_mm: 82 },
    ];
    expect(reasons.rings_close({ rings, thickness_mm: 6 })).toMatch(
      /\ba \(67 \S+ 72 mm\).*\bb \(72 \S+ 82 mm\).* 6\.0 mm/,
    );
  });

  it("says what the pupil's place is taken from", () => {
    const said = (["thread", "sensor", "window"] as const).map((from) =>
      reasons.pupil_distance_assumed({ distance_mm: 24, spread_percent: 20, from }),
    );
    expect(new Set(said)).toHaveLength(3);
    for (const text of said) expect(text).toMatch(/24 mm.*20 %/);
  });
});

it("every step of a procedure can be read out as it stands", () => {
  const numbers = { depths_m: [5, 8], depth_m: 5, cct_K: 5600, distance_m: 2 };
  for (const step of [...Object.values(balanceProcedure), ...Object.values(mountingProcedure)])
    expect(step(numbers)).toMatch(/^[A-Z].*\.$/);
});
