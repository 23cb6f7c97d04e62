import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { normalFrom } from "../random.test-support.js";
import { type Spectrum, spectrumFrom, WAVELENGTHS_NM } from "../spectrum/grid.js";
import type { CardSample, CardSeries } from "./card-samples.js";
import { kdFromChlorophyll } from "./chlorophyll-morel-maritorena-2001.js";
import { CARD_SHAPE_SIGMA_LN, type CardFit, fitCard, studentWidening } from "./fit-card.js";
import {
  band,
  CHANNELS,
  conditions,
  fitOf,
  photograph,
  series,
  trueKd,
  withoutExposure,
} from "./fit-card.test-support.js";
import { familyKd, lnRemainder } from "./hue-family.js";
import { jerlovKd } from "./jerlov-1976.js";
import { PURE_WATER_KD_PER_M } from "./pure-water.js";
import { SCATTERING_SIGMA_LN } from "./water-description.js";

const FOUR_OVER_12_M = [3, 7, 11, 15];

describe("fitting a water to a grey card", () => {
  // Known waters: Jerlov 1976, types IB to 5C, and two of Morel & Maritorena 2001 that are not of the family.
  const waters = [
    ...(["IB", "II", "III", "1C", "3C", "5C"] as const).map((name) => ({ name, kd: jerlovKd(name) })),
    { name: "0.5 mg/m3 of chlorophyll", kd: kdFromChlorophyll(0.5) },
    { name: "3 mg/m3 of chlorophyll", kd: kdFromChlorophyll(3) },
  ];

  it.each(waters)(
    "four cards over 12 m with 2 % noise give Kd of $name back within 10 % in every channel",
    ({ kd }) => {
      const truth = trueKd(kd, 3, 15);
      for (let seed = 1; seed <= 10; seed++) {
        const { channel_kd } = fitOf(kd, FOUR_OVER_12_M, 0.02, normalFrom(seed));
        CHANNELS.forEach((name, k) => {
          const off = Math.abs(channel_kd![name].value_per_m / truth[k] - 1);
          expect(off, `${name}, seed ${seed}`).toBeLessThan(0.1);
        });
      }
    },
  );

  it("gives a member of the family back exactly where nothing is noisy", () => {
    const fit = fitOf(familyKd(0.08, 0.6), FOUR_OVER_12_M, 0);
    expect(fit.turbidity_per_m).toBeCloseTo(0.08, 3);
    expect(fit.rms_residual_ln).toBeLessThan(2e-3);
  });

  it("widens errors of few readings by Student's t (table of its 90th percentile: 1.533, 1.372, 1.337, 1.310)", () => {
    for (const [freedom, t] of [
      [4, 1.533],
      [10, 1.372],
      [16, 1.337],
      [30, 1.31],
    ]) {
      expect(studentWidening(freedom) * 1.2816).toBeCloseTo(t, 2);
    }
  });

  it("claims only differences between channels without exposures, and gets those right", () => {
    const kd = jerlovKd("III");
    const truth = trueKd(kd, 3, 15);
    const samples = withoutExposure(photograph(kd, FOUR_OVER_12_M, 0.02, normalFrom(3))).map(
      (sample, n): CardSample => {
        const lifted = 0.4 + 0.15 * n;
        return { ...sample, rgb: [sample.rgb[0] * lifted, sample.rgb[1] * lifted, sample.rgb[2] * lifted] };
      },
    );
    const fit = fitCard(series(samples), conditions);
    expect(fit.channel_kd).toBeUndefined();
    const { red_minus_green, blue_minus_green } = fit.channel_kd_difference;
    expect(Math.abs(red_minus_green.value_per_m - (truth[0] - truth[1]))).toBeLessThan(
      3 * red_minus_green.standard_error_per_m,
    );
    expect(Math.abs(blue_minus_green.value_per_m - (truth[2] - truth[1]))).toBeLessThan(
      3 * blue_minus_green.standard_error_per_m,
    );
  });

  it("takes a locked exposure as well as stated ones", () => {
    const kd = jerlovKd("II");
    const scale = 0.5 / band(kd, 3)[1];
    const samples = FOUR_OVER_12_M.map((depth_m): CardSample => {
      const [red, green, blue] = band(kd, depth_m).map((value) => value * scale);
      return { depth_m, rgb: [red, green, blue] };
    });
    const fit = fitCard(series(samples, { locked_exposure: true, locked_balance: true }), conditions);
    expect(fit.channel_kd!.blue.value_per_m).toBeCloseTo(trueKd(kd, 3, 15)[2], 3);
  });

  it("reads pictures stored by Rec. 709 as it reads linear ones", () => {
    const samples = photograph(jerlovKd("II"), FOUR_OVER_12_M, 0.02, normalFrom(5));
    const store = (light: number): number => (light < 0.018 ? 4.5 * light : 1.099 * light ** 0.45 - 0.099);
    const stored = samples.map((sample): CardSample => {
      const [red, green, blue] = sample.rgb.map(store);
      return { ...sample, rgb: [red, green, blue] };
    });
    const linear = fitCard(series(samples), conditions);
    const coded = fitCard(series(stored, { transfer_curve: "rec709" }), conditions);
    expect(coded.channel_kd!.green.value_per_m).toBeCloseTo(linear.channel_kd!.green.value_per_m, 6);
  });

  it("holds one spoilt card off instead of following it", () => {
    const kd = jerlovKd("II");
    const depths = [2, 5, 8, 11, 14, 17];
    const samples = photograph(kd, depths, 0.02, normalFrom(7)).map((sample, n): CardSample => {
      const [red, green, blue] = sample.rgb;
      return n === 3 ? { ...sample, rgb: [red * 0.75, green * 0.75, blue * 0.75] } : sample;
    });
    const fit = fitCard(series(samples), conditions);
    const truth = trueKd(kd, 2, 17);
    for (const [k, name] of CHANNELS.entries()) {
      expect(Math.abs(fit.channel_kd![name].value_per_m / truth[k] - 1)).toBeLessThan(0.15);
    }
    expect(Math.min(...fit.residuals_ln[3])).toBeLessThan(-0.15);
  });

  it("states as spread of shape what waters outside the family leave", () => {
    // Morel & Maritorena 2001 and Austin & Petzold 1986, photographed without noise.
    const rows = readFileSync(new URL("../../tables/austin_petzold_1986_model.csv", import.meta.url), "utf8")
      .trim()
      .split("\n")
      .slice(1)
      .map((line) => line.split(",").map(Number));
    const austinPetzold = (k490: number): Spectrum =>
      spectrumFrom((nm, i) => {
        const row = rows.find(([at]) => at === nm);
        return row ? row[1] * (k490 - 0.0224) + row[2] : PURE_WATER_KD_PER_M[i];
      });
    const truths = [
      ...[0.1, 0.3, 1, 3].map((mg_m3) => kdFromChlorophyll(mg_m3)),
      ...[0.04, 0.07, 0.12].map(austinPetzold),
    ];
    const squares = truths.flatMap((kd) => {
      const fitted = lnRemainder(fitOf(kd, FOUR_OVER_12_M, 0).description.kd_reference_per_m);
      const truth = lnRemainder(kd);
      return Array.from(fitted, (value, i) => (value - truth[i]) ** 2).filter(
        (_, i) => WAVELENGTHS_NM[i] >= 440 && WAVELENGTHS_NM[i] <= 600,
      );
    });
    const rms = Math.sqrt(squares.reduce((sum, square) => sum + square, 0) / squares.length);
    expect(Math.abs(rms - CARD_SHAPE_SIGMA_LN)).toBeLessThan(0.02);
  });
});

describe("what a fit tells beside the water", () => {
  const SIX = [2, 5, 8, 11, 14, 17];
  const deviation = (values: readonly number[]): number => {
    const mean = values.reduce((sum, x) => sum + x, 0) / values.length;
    return Math.sqrt(values.reduce((sum, x) => sum + (x - mean) ** 2, 0) / (values.length - 1));
  };

  it("differences between channels that are those of the channels, as each is of the water found", () => {
    const { channel_kd, channel_kd_difference, description } = fitOf(jerlovKd("III"), SIX, 0.02);
    const { red, green, blue } = channel_kd!;
    const { red_minus_green, blue_minus_green } = channel_kd_difference;
    expect(red_minus_green.value_per_m).toBeCloseTo(red.value_per_m - green.value_per_m, 12);
    expect(blue_minus_green.value_per_m).toBeCloseTo(blue.value_per_m - green.value_per_m, 12);
    const found = trueKd(description.kd_reference_per_m, 2, 17);
    [red, green, blue].forEach(({ value_per_m }, k) => {
      expect(value_per_m / found[k]).toBeCloseTo(1, 3);
    });
  });

  it("errors as wide as what it finds scatters, for channels, their differences and the water (80 series)", () => {
    const normal = normalFrom(1949);
    // A water in the middle of the family: at its ends the mix cannot scatter both ways, and errors are claimed up to twice as wide.
    const fits = Array.from({ length: 80 }, () => fitOf(familyKd(0.15, 1), SIX, 0.025, normal));
    const claims = [
      ...CHANNELS.map((name) => (fit: CardFit) => fit.channel_kd![name]),
      ({ channel_kd_difference }: CardFit) => channel_kd_difference.red_minus_green,
      ({ channel_kd_difference }: CardFit) => channel_kd_difference.blue_minus_green,
      ({ turbidity_per_m, description }: CardFit) => ({
        value_per_m: Math.log(turbidity_per_m),
        standard_error_per_m: description.remainder_sigmas.find(({ cause }) => cause === "card_noise")!
          .sigma_ln,
      }),
    ];
    const ratios: number[] = [];
    for (const claim of claims) {
      const scatter = deviation(fits.map((fit) => claim(fit).value_per_m));
      const claimed = fits.reduce((sum, fit) => sum + claim(fit).standard_error_per_m, 0) / fits.length;
      // 80 values give a standard deviation to 8 %.
      ratios.push(claimed / scatter);
    }
    // 80 values give a standard deviation to 8 %.
    for (const ratio of ratios) expect.soft(ratio, String(ratios)).toBeLessThan(1.25);
    for (const ratio of ratios) expect.soft(ratio, String(ratios)).toBeGreaterThan(0.8);
  });

  it("the noise of the readings as it is, where they are many, and what is expected, where there is none", () => {
    const normal = normalFrom(1908);
    const noises = Array.from({ length: 20 }, () => fitOf(jerlovKd("II"), SIX, 0.06, normal).noise_ln);
    const mean = noises.reduce((sum, x) => sum + x, 0) / noises.length;
    expect(mean / 0.06).toBeGreaterThan(0.85);
    expect(mean / 0.06).toBeLessThan(1.1);
    // Three readings of 2.5 % expected, 12 that fit, and four of those spent on turbidity and the level of three channels.
    const exact = fitOf(familyKd(0.08, 0.9), FOUR_OVER_12_M, 0).noise_ln;
    expect(exact / (0.025 * Math.sqrt(3 / (3 + 8)))).toBeCloseTo(1, 1);
  });

  it("what is left open: the noise, the shape of the spectrum and how a water scatters", () => {
    const { description } = fitOf(jerlovKd("II"), FOUR_OVER_12_M, 0.02);
    expect(description.remainder_sigmas).toEqual([
      { cause: "card_noise", sigma_ln: expect.any(Number) },
      { cause: "spectral_shape", sigma_ln: CARD_SHAPE_SIGMA_LN },
    ]);
    expect(description.scattering_sigmas).toEqual([
      { cause: "scattering_per_water", sigma_ln: SCATTERING_SIGMA_LN },
    ]);
  });

  it("that no water is like it, where light fades more slowly than in pure water or faster than in any published one", () => {
    const refusal = (kd: Spectrum, depths: readonly number[]) => {
      try {
        fitOf(kd, depths, 0);
      } catch (error) {
        return error;
      }
      return undefined;
    };
    expect(refusal(PURE_WATER_KD_PER_M, FOUR_OVER_12_M)).toMatchObject({
      code: "card_samples_outside_family",
      refusal: { parameters: { case: "clearer" } },
    });
    expect(refusal(familyKd(5.2, 1), [0.5, 2, 3.5])).toMatchObject({
      code: "card_samples_outside_family",
      refusal: { parameters: { case: "murkier" } },
    });
    expect(refusal(familyKd(4, 1), [0.5, 2, 3.5])).toBeUndefined();
  });
});

describe("card samples that cannot be used", () => {
  const good = photograph(jerlovKd("II"), FOUR_OVER_12_M, 0);
  const refuses = (samples: CardSample[], code: string, more: Partial<CardSeries> = {}): void =>
    expect(() => fitCard(series(samples, more), conditions)).toThrow(expect.objectContaining({ code }));

  it("too few depths, or too close together", () => {
    refuses(good.slice(0, 1), "card_samples_too_few");
    refuses([], "card_samples_too_few");
    refuses([good[0], { ...good[1], depth_m: 4 }], "card_samples_too_few");
  });

  it("clipped, dark, broken or half-described", () => {
    refuses([good[0], { ...good[1], rgb: [0.2, 1, 0.3] }], "card_samples_malformed");
    refuses([good[0], { ...good[1], rgb: [0, 0.4, 0.3] }], "card_samples_malformed");
    refuses([good[0], { ...good[1], rgb: [Number.NaN, 0.4, 0.3] }], "card_samples_malformed");
    refuses([good[0], { ...good[1], depth_m: -1 }], "card_samples_malformed");
    refuses([good[0], ...withoutExposure(good.slice(1))], "card_samples_malformed");
    refuses([good[0], { ...good[1], balance_gains: [0, 1, 1] }], "card_samples_malformed");
    refuses(
      good.map(({ balance_gains: _, ...rest }) => rest),
      "card_samples_malformed",
    );
  });

  it("depths the wrong way round", () => {
    const swapped = good.map((sample, n): CardSample => ({ ...sample, depth_m: FOUR_OVER_12_M[3 - n] }));
    refuses(swapped, "card_samples_contradict");
  });

  it("one card lit by a lamp among few, named by its depth", () => {
    const [red, green, blue] = good[2].rgb;
    const lit = good
      .slice(1)
      .map(
        (sample, n): CardSample =>
          n === 1 ? { ...sample, rgb: [Math.min(0.9, red * 40), green, blue] } : sample,
      );
    expect(() => fitCard(series(lit), conditions)).toThrow(
      expect.objectContaining({
        refusal: {
          code: "card_samples_contradict",
          parameters: { rms_ln: expect.any(Number), worst_depth_m: 11 },
        },
      }),
    );
  });

  it("light that does not fade at all", () => {
    const still = good.map((sample): CardSample => ({ ...good[0], depth_m: sample.depth_m }));
    expect(() => fitCard(series(still), conditions)).toThrow(
      expect.objectContaining({ code: expect.stringMatching(/card_samples_(contradict|outside_family)/) }),
    );
  });
});
