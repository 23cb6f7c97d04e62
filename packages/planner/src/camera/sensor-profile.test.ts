import { publishedIlluminant } from "@sunfathom/fixtures/illuminants";
import { column, readTable } from "@sunfathom/fixtures/tables";
import {
  CHART_PATCHES,
  deltaE00,
  illuminance_lx,
  illuminant,
  integrateProduct,
  labOf,
  multiply,
  onGrid,
  scale,
} from "@sunfathom/optics";
import { describe, expect, it } from "vitest";
import { castBetween, redExcessStops } from "./cast.js";
import { WHITE_D65, xyzUnderD65 } from "./d65.js";
import { apply } from "./matrix.js";
import { sensorOf } from "./sensor.js";
import { rawOf, sensorProfile } from "./sensor-profile.js";

const profile = sensorProfile(sensorOf({}, { crosstalkSd: 0 }));

describe("the camera's colours", () => {
  it("count daylight in lux: the green channel of D55 reads its illuminance (ISO 12232 takes daylight)", () => {
    const light = illuminant("D55");
    expect(rawOf(profile, light)[1]).toBeCloseTo(illuminance_lx(light), 6);
  });

  it("reproduce the 24-patch chart under D65 with a mean CIEDE2000 below 2.5 (typical of camera matrices, from memory)", () => {
    const light = illuminant("D65");
    const errors = CHART_PATCHES.map(({ reflectance }) => {
      const seen = apply(profile.daylightMatrix, rawOf(profile, multiply(light, reflectance)));
      return deltaE00(labOf(xyzUnderD65(reflectance), WHITE_D65), labOf(seen, WHITE_D65));
    });
    expect(errors.reduce((sum, e) => sum + e, 0) / 24).toBeLessThan(2.5);
  });

  it("hold for colours that the matrix was not fitted to: the test colour samples of CIE 13.3, mean CIEDE2000 below 3", () => {
    const rows = readTable("cie13_test_colour_samples");
    const names = [...new Set(rows.map((row) => row["sample"]))];
    expect(names.length).toBe(14);
    const light = illuminant("D65");
    const errors = names.map((name) => {
      const own = rows.filter((row) => row["sample"] === name);
      const reflectance = onGrid(column(own, "wavelength_nm"), column(own, "reflectance"));
      const seen = apply(profile.daylightMatrix, rawOf(profile, multiply(light, reflectance)));
      return deltaE00(labOf(xyzUnderD65(reflectance), WHITE_D65), labOf(seen, WHITE_D65));
    });
    expect(errors.reduce((sum, e) => sum + e, 0) / 14).toBeLessThan(3);
  });

  it("have D65 for white: XYZ 0.9504, 1, 1.0889 (CIE 15)", () => {
    expect(WHITE_D65[0]).toBeCloseTo(0.9504, 3);
    expect(WHITE_D65[1]).toBeCloseTo(1, 12);
    expect(WHITE_D65[2]).toBeCloseTo(1.0889, 2);
  });
});

describe("a sensor's profile", () => {
  it("holds per patch what each channel sees of it under any light", () => {
    const { patchResponses, sensor, unit } = sensorProfile(sensorOf({}, { crosstalkSd: 0.75 }));
    const light = publishedIlluminant("A");
    expect(patchResponses).toHaveLength(24);
    patchResponses.forEach((responses, i) => {
      const raw = rawOf({ sensor, unit }, multiply(light, CHART_PATCHES[i].reflectance));
      responses.forEach((response, k) => {
        expect(integrateProduct(light, response) / unit / raw[k]).toBeCloseTo(1, 12);
      });
    });
  });
});

describe("the cast of one light under a balance to another", () => {
  const [warm, cool] = [publishedIlluminant("A"), illuminant("D65")];

  it("is nothing for the light that was balanced to, however bright", () => {
    expect(castBetween(profile, warm, scale(warm, 40))).toBeCloseTo(0, 6);
    expect(redExcessStops(profile, warm, scale(warm, 40))).toBeCloseTo(0, 10);
  });

  it("is red for incandescent light under a balance to daylight, and the other way round (sign)", () => {
    expect(castBetween(profile, cool, warm)).toBeGreaterThan(15);
    expect(redExcessStops(profile, cool, warm)).toBeGreaterThan(0.5);
    expect(redExcessStops(profile, warm, cool)).toBeCloseTo(-redExcessStops(profile, cool, warm), 12);
  });
});
