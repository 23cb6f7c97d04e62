import { type PublishedIlluminant, publishedIlluminant } from "@sunfathom/fixtures/illuminants";
import { readTable } from "@sunfathom/fixtures/tables";
import { XYZ_D50, XYZ_D65, xy } from "colorjs.io/fn";
import { describe, expect, it } from "vitest";
import { spectrumFrom } from "../spectrum/grid.js";
import { CHART_PATCHES } from "./chart-24.js";
import { daylightOfCct } from "./daylight-of-cct.js";
import { illuminant, planckian } from "./illuminants.js";
import { type LedName, ledIlluminant } from "./led-illuminants.js";
import { chromaticity, illuminance_lx, xyzOf } from "./observer.js";

const xyOf = (spectrum: Float64Array) => chromaticity(xyzOf(spectrum));

describe("chromaticity of CIE illuminants", () => {
  // CIE 15, Table T.3, 2 degree observer.
  const CIE_15: { name: PublishedIlluminant; x: number; y: number }[] = [
    { name: "A", x: 0.44758, y: 0.40745 },
    { name: "D50", x: 0.34567, y: 0.35851 },
    { name: "D55", x: 0.33243, y: 0.34744 },
    { name: "D65", x: 0.31272, y: 0.32903 },
    { name: "D75", x: 0.29903, y: 0.31488 },
  ];
  it.each(CIE_15)("$name is ($x, $y) within 5e-5 (CIE 15)", ({ name, x, y }) => {
    const found = xyOf(publishedIlluminant(name));
    expect(Math.abs(found.x - x)).toBeLessThan(5e-5);
    expect(Math.abs(found.y - y)).toBeLessThan(5e-5);
  });

  it.each(["D55", "D65"] as const)("%s of the model is the published one", (name) => {
    expect(illuminant(name)).toEqual(publishedIlluminant(name));
  });

  // CIE 15:2018, Table 12, as remembered to four digits; the tables were checked against them within 3e-4.
  const CIE_15_2018: { name: LedName; x: number; y: number }[] = [
    { name: "LED-B1", x: 0.456, y: 0.4078 },
    { name: "LED-B2", x: 0.4357, y: 0.4012 },
    { name: "LED-B3", x: 0.3756, y: 0.3723 },
    { name: "LED-B4", x: 0.3422, y: 0.3502 },
    { name: "LED-B5", x: 0.3118, y: 0.3236 },
  ];
  it.each(CIE_15_2018)("$name is ($x, $y) within 3e-4 (CIE 15:2018, Table 12)", ({ name, x, y }) => {
    const found = xyOf(ledIlluminant(name));
    expect(Math.abs(found.x - x)).toBeLessThan(3e-4);
    expect(Math.abs(found.y - y)).toBeLessThan(3e-4);
  });

  it("an equal-energy spectrum lies at (1/3, 1/3) (CIE 15: the functions have equal areas)", () => {
    const { x, y } = xyOf(spectrumFrom(() => 1));
    expect(x).toBeCloseTo(1 / 3, 4);
    expect(y).toBeCloseTo(1 / 3, 4);
  });

  it.each([
    { name: "D65", space: XYZ_D65 },
    { name: "D50", space: XYZ_D50 },
  ] as const)(
    "$name integrates to the white of a general colour library (colorjs.io 0.7)",
    ({ name, space }) => {
      const [X, Y, Z] = xyzOf(publishedIlluminant(name));
      // Its whites follow from chromaticities of four digits, whose rounding moves Z/Y by up to 5e-4.
      expect(Math.abs(X / Y - space.white[0])).toBeLessThan(3e-4);
      expect(Math.abs(Z / Y - space.white[2])).toBeLessThan(5e-4);
      if (name === "D65") {
        const theirs = xy({ space, coords: [X, Y, Z], alpha: 1 });
        const ours = xyOf(publishedIlluminant(name));
        expect(ours.x).toBeCloseTo(theirs[0], 10);
        expect(ours.y).toBeCloseTo(theirs[1], 10);
      }
    },
  );
});

describe("daylight of a colour temperature", () => {
  it("rebuilds D65 at 6504 K to 2e-3 of its value at 560 nm, wavelength by wavelength (CIE 15)", () => {
    const built = daylightOfCct(6504);
    const table = illuminant("D65");
    built.forEach((v, i) => {
      expect(Math.abs(v - table[i]) / 100).toBeLessThan(2e-3);
    });
  });

  it.each([
    [5003, "D50"],
    [5503, "D55"],
    [7504, "D75"],
  ] as const)("at %d K has the chromaticity of %s within 1e-3 (CIE 15)", (cct_K, name) => {
    const built = xyOf(daylightOfCct(cct_K));
    const table = xyOf(publishedIlluminant(name));
    expect(Math.hypot(built.x - table.x, built.y - table.y)).toBeLessThan(1e-3);
  });

  it("is continuous where its two polynomials meet at 7000 K", () => {
    const below = xyOf(daylightOfCct(7000));
    const above = xyOf(daylightOfCct(7000.001));
    expect(Math.hypot(below.x - above.x, below.y - above.y)).toBeLessThan(2e-4);
  });
});

describe("a Planckian radiator", () => {
  it("gives illuminant A at its defining 2848 K with c2 = 1.435e-2, that is 2855.5 K with today's c2 (CIE 15)", () => {
    const built = planckian((2848 * 1.4388) / 1.435);
    const table = publishedIlluminant("A");
    built.forEach((v, i) => {
      expect(v * 100).toBeCloseTo(table[i], 2);
    });
  });

  it("peaks where Wien's law says, 2898 um K", () => {
    const spectrum = planckian(5000);
    const peak = spectrum.indexOf(Math.max(...spectrum));
    expect(380 + 5 * peak).toBe(580);
  });
});

describe("photometry", () => {
  it("gives 683 lm per watt at 555 nm (definition of the candela; V(555) = 1)", () => {
    const line = spectrumFrom((nm) => (nm === 555 ? 1 / 5 : 0));
    expect(illuminance_lx(line)).toBeCloseTo(683, 3);
  });
});

describe("the 24-patch chart", () => {
  it("has 24 patches with reflectances between 0 and 1 (Ohta 1997)", () => {
    expect(CHART_PATCHES.length).toBe(24);
    for (const { reflectance } of CHART_PATCHES) {
      expect(reflectance.every((r) => r > 0 && r < 1)).toBe(true);
    }
  });

  it("has Y 0.887 for its white, patch 19, and 0.203 for its middle grey, patch 22, under D50, checked when the table was taken in", () => {
    const light = publishedIlluminant("D50");
    const patches = [...new Set(readTable("chart24_reflectance_ohta1997").map(({ patch }) => patch))];
    expect(patches).toEqual(Array.from({ length: 24 }, (_, index) => String(index + 1)));
    const luminance = (number: number) => {
      const patch = CHART_PATCHES[number - 1];
      return xyzOf(patch.reflectance.map((r, i) => r * light[i]))[1] / xyzOf(light)[1];
    };
    expect(luminance(19)).toBeCloseTo(0.887, 3);
    expect(luminance(22)).toBeCloseTo(0.203, 3);
  });
});
