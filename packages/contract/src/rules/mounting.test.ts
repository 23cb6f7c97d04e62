import { describe, expect, it } from "vitest";
import { mountingRules } from "./mounting.js";
import { mountingCases } from "./mounting-cases.test-support.js";

describe("the rules of a mounting scene", () => {
  it("are all tried here, and have one code each", () => {
    expect(mountingRules.map(({ code }) => code)).toEqual(Object.keys(mountingCases));
  });

  describe.each(mountingRules)("$code", ({ code, violations }) => {
    it("lets pass what keeps it", () => {
      const passes = mountingCases[code as keyof typeof mountingCases]?.passes ?? [];
      expect(passes.length).toBeGreaterThan(0);
      for (const scene of passes) expect(violations(scene), JSON.stringify(scene)).toEqual([]);
    });

    it("refuses what breaks it, and points to it", () => {
      const refused = mountingCases[code as keyof typeof mountingCases]?.refuses ?? [];
      expect(refused.length).toBeGreaterThan(0);
      for (const [scene, pointers] of refused) {
        const broken = violations(scene);
        expect(
          broken.map(({ pointer }) => pointer),
          JSON.stringify(scene),
        ).toEqual(pointers);
      }
    });
  });
});
