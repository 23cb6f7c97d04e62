// What is said must be what was computed, and be said where it holds.

import { atNight, daylightScene, TWO_LAMPS } from "@sunfathom/fixtures/scenes";
import { type CardFit, illuminance_lx } from "@sunfathom/optics";
import { describe, expect, it } from "vitest";
import { conditionsOf } from "../light/conditions.js";
import { redTrustedTo_m } from "../light/inelastic.js";
import { downwellingAt, underwater } from "../light/underwater.js";
import type { AttenuationAnswer } from "../result/attenuation.js";
import type { Scene } from "../scene/scene.js";
import { NOMINAL } from "../uncertainty/nuisance.js";
import { attenuation } from "./attenuation.js";
import { cardFitFigures } from "./card-fit.js";

const codesOf = ({ reasons }: AttenuationAnswer) => reasons.map(({ code }) => code);
const parametersOf = ({ reasons }: AttenuationAnswer, code: string) =>
  (reasons.find((reason) => reason.code === code)?.parameters ?? {}) as Readonly<Record<string, number>>;
const worldOf = (scene: Scene) => underwater(conditionsOf(scene), NOMINAL);

describe("the reasons of how light fades", () => {
  it("tell what each channel has lost at the deep end, and the path that the sun takes", () => {
    const scene = daylightScene("IB", 50, 3, 12);
    const answer = attenuation(scene);
    const deepest = answer.depths[answer.depths.length - 1];
    expect(answer.reasons[0].code).toBe("red_goes_first");
    expect(parametersOf(answer, "red_goes_first")).toEqual({
      red_stops: deepest.red_loss_stops.likely,
      green_stops: deepest.green_loss_stops.likely,
      blue_stops: deepest.blue_loss_stops.likely,
      depth_m: 12,
    });
    expect(parametersOf(answer, "sun_path")).toEqual({ mu0: worldOf(scene).daylight?.below.mu0 });
    expect(codesOf(answer)).not.toContain("no_daylight_relative");
  });

  it("tell without daylight that losses are relative, and of no sun", () => {
    const answer = attenuation({ ...atNight(daylightScene("IB", 50, 10)), lamps: [TWO_LAMPS] });
    expect(codesOf(answer)).toContain("no_daylight_relative");
    for (const code of ["sun_path", "red_not_only_transmitted"]) expect(codesOf(answer)).not.toContain(code);
    for (const { code, basis } of answer.reasons) expect([code, basis]).toEqual([code, "computed"]);
  });

  it("tell below the depth to which red is trusted that it is not only transmitted", () => {
    const scene = daylightScene("IB", 45, 5);
    const trusted_m = redTrustedTo_m(worldOf(scene)) ?? Number.NaN;
    const to = (max_depth_m: number) => attenuation({ ...scene, max_depth_m });
    expect(parametersOf(to(trusted_m + 1), "red_not_only_transmitted")).toEqual({ depth_m: trusted_m });
    for (const { code, basis } of to(trusted_m + 1).reasons)
      expect([code, basis]).toEqual([code, "computed"]);
    expect(codesOf(to(trusted_m - 1))).not.toContain("red_not_only_transmitted");
  });
});

describe("the light at each depth", () => {
  it("is as bright as what comes down, in lux, with the doubt about the sky: not so the losses", () => {
    const scene = daylightScene("II", 40, 6);
    const answer = attenuation(scene);
    const [light] = answer.depths;
    expect(
      (light.illuminance_lx?.likely ?? 0) / illuminance_lx(downwellingAt(worldOf(scene), 6)),
    ).toBeCloseTo(1, 6);
    const bright = light.illuminance_lx ?? { low: 0, likely: 0, high: 0 };
    const doubt_stops = Math.log2(bright.high / bright.low);
    expect(doubt_stops).toBeGreaterThan(light.photopic_loss_stops.high - light.photopic_loss_stops.low + 0.1);
    // Red's loss is the main figure: nothing of the sky's level, of where a subject stands, or of lamps bears on it.
    for (const cause of ["daylight_level", "upright_share", "lamp_beam", "path_scattering"]) {
      expect(answer.uncertainty.map((u) => u.code)).not.toContain(cause);
    }
  });

  it("is at each depth of a range what it is there alone, doubt and all, and rests on the models of light", () => {
    const scene = daylightScene("IB", 50, 3, 12);
    const answer = attenuation(scene);
    for (const light of answer.depths) {
      const alone = attenuation({ ...scene, min_depth_m: light.depth_m, max_depth_m: light.depth_m })
        .depths[0];
      for (const key of ["red_loss_stops", "blue_loss_stops", "par_loss_stops", "illuminance_lx"] as const) {
        for (const bound of ["low", "likely", "high"] as const) {
          expect((light[key]?.[bound] ?? 0) / (alone[key]?.[bound] ?? 0)).toBeCloseTo(1, 6);
        }
      }
    }
    expect(answer.sources).toEqual(expect.arrayContaining(["jerlov_1976", "bartlett_1998"]));
    for (const { code, basis } of answer.reasons) expect([code, basis]).toEqual([code, "computed"]);
  });

  it("loses red to a tenth where an integral over 600 to 700 nm says so (trapezoid rule)", () => {
    const scene = daylightScene("3C", 50, 6);
    const answer = attenuation(scene);
    const redAt = (depth_m: number): number =>
      downwellingAt(worldOf(scene), depth_m).reduce((sum, e, i) => {
        const nm = 380 + 5 * i;
        return nm < 600 || nm > 700 ? sum : sum + (nm === 600 || nm === 700 ? e / 2 : e);
      }, 0);
    expect(redAt(answer.red_to_tenth_depth_m.likely) / redAt(0)).toBeCloseTo(0.1, 6);
    expect(redAt(answer.red_to_hundredth_depth_m.likely) / redAt(0)).toBeCloseTo(0.01, 6);
  });
});

describe("the fit of a grey card", () => {
  const error = (value_per_m: number) => ({ value_per_m, standard_error_per_m: value_per_m / 10 });
  const fit: CardFit = {
    description: conditionsOf(daylightScene("IB", 45, 5)).water,
    turbidity_per_m: 0.05,
    hue_mix: 0,
    channel_kd: { red: error(0.4), green: error(0.08), blue: error(0.05) },
    channel_kd_difference: { red_minus_green: error(0.32), blue_minus_green: error(-0.03) },
    residuals_ln: [
      [Math.LN2, 0, -Math.LN2],
      [0, 2 * Math.LN2, 0],
    ],
    rms_residual_ln: 3 * Math.LN2,
    noise_ln: 0.02,
    shownAt: () => ({ ln: [], covariance: [] }),
    weights: [],
    movedBy: () => ({ channel_kd: [0, 0, 0], ln: [] }),
  };
  const scene: Scene = {
    ...daylightScene("IB", 45, 5),
    card_samples: [3, 9].map((depth_m) => ({ depth_m, red: 0.2, green: 0.4, blue: 0.3 })),
  };

  it("is told in stops, ln 2 each, card by card, and per metre", () => {
    expect(cardFitFigures(fit, scene)).toEqual({
      red_kd_per_m: 0.4,
      red_kd_standard_error_per_m: expect.closeTo(0.04, 12),
      green_kd_per_m: 0.08,
      green_kd_standard_error_per_m: expect.closeTo(0.008, 12),
      blue_kd_per_m: 0.05,
      blue_kd_standard_error_per_m: expect.closeTo(0.005, 12),
      red_minus_green_kd_per_m: 0.32,
      red_minus_green_kd_standard_error_per_m: expect.closeTo(0.032, 12),
      blue_minus_green_kd_per_m: -0.03,
      blue_minus_green_kd_standard_error_per_m: expect.closeTo(-0.003, 12),
      rms_residual_stops: expect.closeTo(3, 12),
      residuals: [
        { depth_m: 3, red_stops: 1, green_stops: 0, blue_stops: -1 },
        { depth_m: 9, red_stops: 0, green_stops: 2, blue_stops: 0 },
      ],
    });
  });

  it("tells differences alone where exposures were not known", () => {
    const { channel_kd: _, ...without } = fit;
    const figures = cardFitFigures(without, scene);
    expect(figures).not.toHaveProperty("red_kd_per_m");
    expect(figures.red_minus_green_kd_per_m).toBe(0.32);
  });
});
