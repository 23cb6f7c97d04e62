import { describe, expect, it } from "vitest";
import { WILLIAMSON_HOLLINS_2022 } from "../data/williamson-hollins-2022.js";
import { WAVELENGTHS_NM } from "../spectrum/grid.js";
import { lnRemainder, lnTurbidity } from "./hue-family.js";
import { type JerlovType, jerlovKd } from "./jerlov-1976.js";
import { PURE_WATER_ABSORPTION_PER_M } from "./pure-water.js";
import { secchiDepth_m } from "./secchi.js";
import { VISIBILITY_INDEX } from "./visibility.js";
import {
  combinedSigma,
  SCATTERING_SIGMA_LN,
  scatteringScaleForBeam,
  type WaterDescription,
} from "./water-description.js";
import { describeByClarity } from "./water-from-clarity.js";
import { describeByChlorophyll, describeByType } from "./water-from-name.js";
import { CLARITY_RANGES, kdForClarity, WATER_HUES, type WaterHue } from "./water-hue.js";
import { REFERENCE_MU0, waterFromKd } from "./water-optics.js";

const CLARITIES = ["secchi_depth_m", "visibility_m"] as const;

function requireSound(what: string, description: WaterDescription): void {
  const water = waterFromKd(description.kd_reference_per_m);
  for (let i = 0; i < WAVELENGTHS_NM.length; i++) {
    const kd = water.kd_reference_per_m[i];
    const where = `${what}, ${WAVELENGTHS_NM[i]} nm`;
    expect(kd, where).toBeGreaterThanOrEqual(PURE_WATER_ABSORPTION_PER_M[i]);
    expect(REFERENCE_MU0 * kd, where).toBeLessThanOrEqual(water.beam_attenuation_per_m[i] * (1 + 1e-9));
  }
  for (const sigmas of [description.remainder_sigmas, description.scattering_sigmas]) {
    expect(combinedSigma(sigmas), what).toBeGreaterThan(0.05);
    expect(combinedSigma(sigmas), what).toBeLessThan(4);
  }
}

describe("water from a distance and a hue", () => {
  it.each(CLARITIES)("is physically possible over the whole range of every hue, by %s", (clarity) => {
    for (const hue of WATER_HUES) {
      const [least, most] = CLARITY_RANGES[clarity][hue];
      for (let step = 0; step <= 6; step++) {
        const value = least * (most / least) ** (step / 6) * (step === 0 ? 1 + 1e-9 : 1 - 1e-9);
        requireSound(`${hue} ${value} m`, describeByClarity(clarity, value, hue));
      }
    }
  });

  it.each(CLARITIES)("grows murkier at every wavelength as %s falls", (clarity) => {
    for (const hue of WATER_HUES) {
      const [least, most] = CLARITY_RANGES[clarity][hue];
      const near = describeByClarity(clarity, least * 1.2, hue).kd_reference_per_m;
      const far = describeByClarity(clarity, most / 1.2, hue).kd_reference_per_m;
      for (let i = 0; i < near.length; i++) expect(near[i]).toBeGreaterThanOrEqual(far[i]);
    }
  });

  it("shows the beam attenuation that the visibility told", () => {
    const description = describeByClarity("visibility_m", 25, "blue");
    const beam = waterFromKd(description.kd_reference_per_m).beam_attenuation_per_m[VISIBILITY_INDEX];
    // Davies-Colley 1988: 4.8 / 25 m.
    expect(beam).toBeCloseTo(0.192, 4);
    expect(description.beam_attenuation_530?.value_per_m).toBeCloseTo(0.192, 12);
  });

  it("shows the Secchi disc where it was lost", () => {
    const water = waterFromKd(describeByClarity("secchi_depth_m", 9, "blue_green").kd_reference_per_m);
    expect(secchiDepth_m(water)).toBeCloseTo(9, 5);
  });

  it("takes a blue reef of 25 m visibility for a water between IB and II", () => {
    // Jerlov 1976; scattering by Morel & Maritorena 2001.
    const turbidity = lnTurbidity(describeByClarity("visibility_m", 25, "blue").kd_reference_per_m);
    expect(turbidity).toBeGreaterThan(lnTurbidity(jerlovKd("IB")));
    expect(turbidity).toBeLessThan(lnTurbidity(jerlovKd("II")));
  });
});

describe("two ways of describing one water", () => {
  const named: [JerlovType, WaterHue][] = [
    ["I", "blue"],
    ["IA", "blue"],
    ["IB", "blue"],
    ["II", "blue"],
    ["III", "blue_green"],
    ["1C", "blue_green"],
    ["1C", "green"],
    ["3C", "green"],
    ["5C", "green"],
    ["7C", "brown"],
    ["9C", "brown"],
  ];

  it.each(named)(
    "type %s through its Secchi depth and the word %s comes back within the stated spread",
    (type, hue) => {
      const truth = lnTurbidity(jerlovKd(type));
      const told = describeByClarity("secchi_depth_m", secchiDepth_m(waterFromKd(jerlovKd(type))), hue);
      const off = Math.abs(lnTurbidity(told.kd_reference_per_m) - truth);
      expect(off).toBeLessThan(combinedSigma(told.remainder_sigmas));
    },
  );

  // Beam attenuation at 532 nm as measured in waters of each type, Williamson & Hollins 2022, a + b.
  const measured = (["IB", "II", "III", "1C", "3C", "5C", "7C"] as const).map((type) => {
    const { a, b } = WILLIAMSON_HOLLINS_2022[type];
    const at = (part: { wavelength_nm: number[]; value_per_m: number[] }): number =>
      part.value_per_m[part.wavelength_nm.indexOf(532)];
    return { type, beam_per_m: at(a) + at(b), hue: named.find(([name]) => name === type)![1] };
  });

  it.each(measured)(
    "type $type seen for 4.8 over its measured beam attenuation comes back within two spreads",
    ({ type, beam_per_m, hue }) => {
      const told = describeByClarity("visibility_m", 4.8 / beam_per_m, hue);
      const off = Math.abs(lnTurbidity(told.kd_reference_per_m) - lnTurbidity(jerlovKd(type)));
      expect(off).toBeLessThan(2 * combinedSigma(told.remainder_sigmas));
    },
  );

  it("states a wider spread of scattering than measurements in waters of one type show: a third", () => {
    const ratios = Object.values(WILLIAMSON_HOLLINS_2022).flatMap(({ b }) =>
      b.value_per_m.flatMap((value, i) => {
        const deviation = b.std_dev_per_m[i];
        return deviation !== null && b.campaigns[i] > 2 ? [deviation / value] : [];
      }),
    );
    const between = ratios.reduce((sum, value) => sum + value, 0) / ratios.length;
    expect(between).toBeCloseTo(0.32, 1);
    expect(SCATTERING_SIGMA_LN).toBeGreaterThan(2 * between);
  });
});

describe("water from a type or chlorophyll", () => {
  it("is physically possible and carries its spread", () => {
    for (const type of ["I", "IB", "III", "1C", "9C"] as const) requireSound(type, describeByType(type));
    for (const chlorophyll of [0.02, 0.3, 20])
      requireSound(`${chlorophyll} mg/m3`, describeByChlorophyll(chlorophyll));
  });
});

describe("scattering for a seen beam attenuation", () => {
  it("brings the beam to what was seen", () => {
    const scale = scatteringScaleForBeam(describeByType("II"), 0.4);
    expect(
      waterFromKd(jerlovKd("II"), { scatteringScale: scale! }).beam_attenuation_per_m[VISIBILITY_INDEX],
    ).toBeCloseTo(0.4, 9);
  });

  it("finds none below what the diffuse light demands", () => {
    expect(scatteringScaleForBeam(describeByType("5C"), 0.1)).toBeUndefined();
  });
});

describe("how sure a told distance is", () => {
  const spreadOf = (description: WaterDescription): Record<string, number> =>
    Object.fromEntries(description.remainder_sigmas.map(({ cause, sigma_ln }) => [cause, sigma_ln]));
  /** Half of what ln turbidity changes between a distance shorter and one longer by a standard deviation: propagation of errors. */
  const movedBy = (clarity: (typeof CLARITIES)[number], value_m: number, hue: WaterHue, sigma_ln: number) => {
    const at = (factor: number) =>
      lnTurbidity(describeByClarity(clarity, value_m * factor, hue).kd_reference_per_m);
    return (at(Math.exp(-sigma_ln)) - at(Math.exp(sigma_ln))) / 2;
  };

  it("by a Secchi depth: the reading, the name of the hue, and the shape of the spectrum", () => {
    // A mean difference of 18 % (Lee et al. 2015) is a standard deviation of 0.225 of a normal spread.
    for (const value_m of [8, 14]) {
      const description = describeByClarity("secchi_depth_m", value_m, "blue_green");
      const spread = spreadOf(description);
      expect(Object.keys(spread).sort()).toEqual(["clarity_reading", "hue_name", "spectral_shape"]);
      expect(spread["clarity_reading"]).toBeCloseTo(
        movedBy("secchi_depth_m", value_m, "blue_green", 0.225),
        4,
      );
      expect(description.scattering_sigmas).toEqual([{ cause: "scattering_per_water", sigma_ln: 0.7 }]);
      expect(description).not.toHaveProperty("beam_attenuation_530");
    }
  });

  it("by a visibility: the guess, and what scattering leaves open between beam and diffuse attenuation", () => {
    const description = describeByClarity("visibility_m", 14, "blue_green");
    const spread = spreadOf(description);
    expect(Object.keys(spread).sort()).toEqual([
      "beam_to_diffuse",
      "clarity_reading",
      "hue_name",
      "spectral_shape",
    ]);
    const guess = Math.hypot(0.125, 0.25);
    const moved = movedBy("visibility_m", 14, "blue_green", guess);
    expect(spread["clarity_reading"]).toBeCloseTo(moved, 4);
    // c = a + b: a relative error of b makes one of c by b's share of c.
    const water = waterFromKd(description.kd_reference_per_m);
    const share = water.scattering_per_m[VISIBILITY_INDEX] / (4.8 / 14);
    expect(share).toBeGreaterThan(0.5);
    expect(share).toBeLessThan(1);
    expect(spread["beam_to_diffuse"]).toBeCloseTo((moved / guess) * share * 0.7, 4);
    expect(description.scattering_sigmas).toEqual([
      { cause: "clarity_reading", sigma_ln: expect.closeTo(guess / share, 12) },
    ]);
    expect(description.beam_attenuation_530).toEqual({ value_per_m: 4.8 / 14, sigma_ln: guess });
  });

  // By its definition: mean square change of ln(Kd - Kw) over 440 to 600 nm at a hue mix off by a quarter to either side, as far as
  // there is one: 0 is the bluest, 2 the brownest.
  it.each([
    ["blue", 0, [0.25]],
    ["blue_green", 0.5, [0.25, 0.75]],
    ["green", 1, [0.75, 1.25]],
    ["brown", 2, [1.75]],
  ] as const)(
    "by its hue, %s: as much as a quarter of the way to the next one changes",
    (hue, mix, sides) => {
      const [least, most] = CLARITY_RANGES.secchi_depth_m[hue];
      const value_m = Math.sqrt(least * most);
      const of = (at: number) => lnRemainder(kdForClarity("secchi_depth_m", value_m, at));
      const squares = sides.flatMap((side) =>
        Array.from({ length: 33 }, (_, n) => (of(side)[12 + n] - of(mix)[12 + n]) ** 2),
      );
      expect([WAVELENGTHS_NM[12], WAVELENGTHS_NM[44]]).toEqual([440, 600]);
      const rms = Math.sqrt(squares.reduce((sum, square) => sum + square, 0) / squares.length);
      expect(spreadOf(describeByClarity("secchi_depth_m", value_m, hue))["hue_name"]).toBeCloseTo(rms, 9);
    },
  );
});

describe("what cannot be", () => {
  it.each(CLARITIES)(
    "is outside the ends of each hue by %s, and the ends themselves are possible",
    (clarity) => {
      for (const hue of WATER_HUES) {
        for (const end of CLARITY_RANGES[clarity][hue]) {
          expect(() => describeByClarity(clarity, end, hue)).not.toThrow();
        }
      }
    },
  );

  it.each(CLARITIES)("is said with what natural water shows, to a tenth of a metre: %s", (clarity) => {
    const ranges = Object.values(CLARITY_RANGES[clarity]);
    const least = Math.min(...ranges.map(([from]) => from));
    const most = Math.max(...ranges.map(([, to]) => to));
    expect(least).toBeLessThan(10);
    expect(() => describeByClarity(clarity, 500, "blue")).toThrow(
      expect.objectContaining({
        refusal: {
          code: clarity === "visibility_m" ? "visibility_out_of_range" : "secchi_depth_out_of_range",
          parameters: { value_m: 500, min_m: Number(least.toFixed(1)), max_m: Number(most.toFixed(1)) },
        },
      }),
    );
  });

  it("is said with the hues in which that distance is seen", () => {
    const [least, most] = CLARITY_RANGES.visibility_m.blue_green;
    expect(() => describeByClarity("visibility_m", 4, "blue_green")).toThrow(
      expect.objectContaining({
        refusal: {
          code: "water_hue_contradicts_measure",
          parameters: {
            measure: "visibility_m",
            value_m: 4,
            water_hue: "blue_green",
            min_m: Number(least.toFixed(1)),
            max_m: Number(most.toFixed(1)),
            fitting_hues: ["green", "brown"],
          },
        },
      }),
    );
  });

  it.each([
    ["visibility_m", 60, "brown"],
    ["visibility_m", 1, "blue"],
    ["visibility_m", 45, "green"],
    ["secchi_depth_m", 20, "brown"],
    ["secchi_depth_m", 3, "blue"],
  ] as const)("refuses %s of %s in %s water and says what is possible", (clarity, value, hue) => {
    expect(() => describeByClarity(clarity, value, hue)).toThrow(
      expect.objectContaining({ code: "water_hue_contradicts_measure" }),
    );
  });

  it.each([0, -3, 500, Number.NaN, Number.POSITIVE_INFINITY])("refuses a distance of %s", (value) => {
    expect(() => describeByClarity("visibility_m", value, "blue")).toThrow(
      expect.objectContaining({ code: "visibility_out_of_range" }),
    );
    expect(() => describeByClarity("secchi_depth_m", value, "blue")).toThrow(
      expect.objectContaining({ code: "secchi_depth_out_of_range" }),
    );
  });
});
