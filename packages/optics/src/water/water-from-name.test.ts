import { describe, expect, it } from "vitest";
import { CHLOROPHYLL_SIGMA_LN_REMAINDER, kdFromChlorophyll } from "./chlorophyll-morel-maritorena-2001.js";
import { lnTurbidity } from "./hue-family.js";
import { jerlovKd } from "./jerlov-1976.js";
import { describeByChlorophyll, describeByType } from "./water-from-name.js";

/** Between waters of a type, and between the waters of the relation (Williamson & Hollins 2022). */
const SCATTERING = [{ cause: "scattering_per_water", sigma_ln: 0.7 }];

describe("water from a type", () => {
  // A value that lies anywhere within a step is spread by the step over root 12 (uniform distribution, textbooks).
  it.each([
    ["IB", "IA", "II", 2],
    ["I", "I", "IA", 1],
    ["III", "II", "III", 1],
    ["3C", "1C", "5C", 2],
    ["1C", "1C", "3C", 1],
    ["9C", "7C", "9C", 1],
  ] as const)(
    "%s is as unsure as its scale is coarse: from %s to %s in %d steps",
    (type, clearer, murkier, steps) => {
      const { kd_reference_per_m, remainder_sigmas, scattering_sigmas } = describeByType(type);
      const step = (lnTurbidity(jerlovKd(murkier)) - lnTurbidity(jerlovKd(clearer))) / steps;
      expect(kd_reference_per_m).toEqual(jerlovKd(type));
      expect(remainder_sigmas).toEqual([
        { cause: "water_type_resolution", sigma_ln: expect.closeTo(step / Math.sqrt(12), 12) },
      ]);
      expect(remainder_sigmas[0].sigma_ln).toBeGreaterThan(0);
      expect(scattering_sigmas).toEqual(SCATTERING);
    },
  );

  it("is worked out once", () => {
    expect(describeByType("II")).toBe(describeByType("II"));
    expect(describeByType("II")).not.toBe(describeByType("III"));
  });
});

it("water from chlorophyll is that of its relation, and as unsure as that", () => {
  expect(describeByChlorophyll(0.3)).toEqual({
    kd_reference_per_m: kdFromChlorophyll(0.3),
    coastalShare: 0,
    remainder_sigmas: [{ cause: "chlorophyll_relation", sigma_ln: CHLOROPHYLL_SIGMA_LN_REMAINDER }],
    scattering_sigmas: SCATTERING,
  });
});
