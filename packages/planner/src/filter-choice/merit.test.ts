// The merit by its definition, with a simulation of the noise in place of the few points at which the code samples it.

import { BRIGHT_REEF, daylightScene, NIGHT_WRECK, REEF_WITH_LAMPS } from "@sunfathom/fixtures/scenes";
import {
  CHART_PATCHES,
  deltaE00,
  filterTransmittance,
  integrateProduct,
  labOf,
  multiply,
  type Spectrum,
  type Xyz,
} from "@sunfathom/optics";
import { describe, expect, it } from "vitest";
import { normalFrom } from "../../../optics/src/random.test-support.js";
import { type CameraState, cameraState } from "../camera/camera-state.js";
import { WHITE_D65, xyzUnderD65 } from "../camera/d65.js";
import { fitGrade, graded } from "../camera/grade.js";
import type { Vector3 } from "../camera/matrix.js";
import { pictureMatrix, xyzOfPicture } from "../camera/picture.js";
import { capture, record } from "../camera/recording.js";
import { rawOf } from "../camera/sensor-profile.js";
import { takeShot } from "../camera/shot.js";
import { conditionsOf } from "../light/conditions.js";
import { type Stage, stageAt } from "../light/stage.js";
import { underwater } from "../light/underwater.js";
import type { Scene } from "../scene/scene.js";
import { NOMINAL } from "../uncertainty/nuisance.js";
import { meritOf } from "./merit.js";

const stageOf = (scene: Scene): Stage => stageAt(underwater(conditionsOf(scene), NOMINAL), scene.min_depth_m);
const RED = filterTransmittance("red", 0.6);
const MAGENTA = filterTransmittance("magenta", 0.6);

interface Target {
  wanted: Xyz;
  raw: Vector3;
  weight: number;
}

/** The chart under the light and haze of a stage, and the open water behind it, which weighs as much as four patches. */
function targetsOf(stage: Stage, filter: Spectrum, camera: CameraState): Target[] {
  const { profile } = camera;
  const haze = stage.background ? rawOf(profile, multiply(stage.background.veil, filter)) : [0, 0, 0];
  const targets: Target[] = CHART_PATCHES.map(({ reflectance }) => {
    const [r, g, b] = rawOf(profile, multiply(multiply(stage.subject, filter), reflectance));
    return { wanted: xyzUnderD65(reflectance), raw: [r + haze[0], g + haze[1], b + haze[2]], weight: 1 };
  });
  if (!stage.background) return targets;
  const { openWater, colour, againstSubject } = stage.background;
  const [X, Y, Z] = xyzUnderD65(colour).map((v) => v * againstSubject);
  return [...targets, { wanted: [X, Y, Z], raw: rawOf(profile, multiply(openWater, filter)), weight: 4 }];
}

/** Weighted mean CIEDE2000 of a graded recording over so many draws of its noise. */
function simulated(stage: Stage, filter: Spectrum, camera: CameraState, draws: number): number {
  const { recorder } = takeShot(stage, filter, camera);
  const seen = targetsOf(stage, filter, camera).map(({ wanted, raw, weight }) => {
    const recorded = ([0, 1, 2] as const).map((k) => record(recorder, k, raw[k]));
    return { wanted, weight, recorded };
  });
  const grade = fitGrade(
    seen.map(({ wanted, weight, recorded: [r, g, b] }) => ({
      from: [r.value, g.value, b.value],
      to: wanted,
      variance: [r.variance, g.variance, b.variance],
      // L* = 116 Y^(1/3) - 16: its slope, squared, goes with Y^(-4/3).
      weight: weight / (wanted[1] + 0.02) ** (4 / 3),
    })),
  );
  const normal = normalFrom(24);
  let sum = 0;
  let weights = 0;
  for (const { wanted, weight, recorded } of seen) {
    for (let i = 0; i < draws; i++) {
      const [r, g, b] = recorded.map(({ value, variance }) => value + Math.sqrt(variance) * normal());
      sum += weight * deltaE00(labOf(wanted, WHITE_D65), labOf(graded(grade, [r, g, b]), WHITE_D65));
    }
    weights += weight * draws;
  }
  return sum / weights;
}

const CASES: { name: string; scene: Scene; filter: Spectrum }[] = [
  { name: "a reef through red", scene: daylightScene("IB", 45, 12), filter: RED },
  { name: "green water through magenta", scene: daylightScene("3C", 50, 8), filter: MAGENTA },
  { name: "lamps by day", scene: REEF_WITH_LAMPS, filter: RED },
  { name: "lamps at night, with no open water to see", scene: NIGHT_WRECK, filter: MAGENTA },
];

describe("the merit of a filter", () => {
  it.each(CASES)(
    "is the colour error of chart and open water after one grade, without noise: $name",
    ({ scene, filter }) => {
      const stage = stageOf(scene);
      // Wells so deep and codes so fine that noise is none.
      const camera = { ...cameraState(scene, NOMINAL), fullWellScale: 1e12, bits: 30 };
      const { delta_e00 } = meritOf(stage, filter, camera, "matched");
      expect(delta_e00).toBeGreaterThan(0.5);
      expect(delta_e00).toBeCloseTo(simulated(stage, filter, camera, 1), 3);
    },
  );

  // Six points stand for a cloud of noise. They exaggerate a distance near zero, which bends sharply: the more, the more noise.
  it.each(CASES)(
    "counts noise as a simulation of it does, or some hundredths more: $name",
    ({ scene, filter }) => {
      const stage = stageOf(scene);
      const camera = cameraState(scene, NOMINAL);
      for (const [fullWellScale, most] of [
        [1, 1.07],
        [0.05, 1.13],
      ]) {
        const noisy = { ...camera, fullWellScale };
        const ratio =
          meritOf(stage, filter, noisy, "matched").delta_e00 / simulated(stage, filter, noisy, 300);
        expect(ratio).toBeGreaterThan(0.98);
        expect(ratio).toBeLessThan(most);
      }
    },
  );

  it("tells with it how the camera was balanced and set, what neutral density takes, and where red comes from", () => {
    const stage = stageOf(BRIGHT_REEF);
    const camera = cameraState(BRIGHT_REEF, NOMINAL);
    const { balance, settings, neutral_stops, red_above_600_nm_share } = meritOf(
      stage,
      RED,
      camera,
      "matched",
    );
    const shot = takeShot(stage, RED, camera);
    expect(balance).toEqual(shot.balance);
    expect([settings.iso, settings.f_number]).toEqual([400, 5.6]);
    expect(neutral_stops).toBe(shot.recorder.neutral_stops);
    const { red } = camera.profile.sensor;
    const light = multiply(stage.subject, RED);
    const above = light.map((e, i) => (380 + 5 * i > 600 ? e : 380 + 5 * i === 600 ? e / 2 : 0));
    expect(red_above_600_nm_share).toBeCloseTo(
      integrateProduct(above, red) / integrateProduct(light, red),
      12,
    );
  });
});

describe("the merit of a picture that is looked at as the camera stores it", () => {
  /** BT.709 both ways (ITU-R BT.709, item 1.2), to 8 bits and back. */
  function coded(value: number): number {
    const v = Math.min(1, Math.max(0, value));
    const stored = Math.round(255 * (v < 0.018 ? 4.5 * v : 1.099 * v ** 0.45 - 0.099)) / 255;
    return stored < 0.081 ? stored / 4.5 : ((stored + 0.099) / 1.099) ** (1 / 0.45);
  }

  /** Photons drawn, four pixels averaged, the camera's matrix, code values of each pixel: nothing of it by variances. */
  function looked(stage: Stage, filter: Spectrum, camera: CameraState, draws: number): number {
    const { recorder } = takeShot(stage, filter, camera);
    const { fromRaw } = pictureMatrix(camera.profile);
    const normal = normalFrom(7);
    let sum = 0;
    let weights = 0;
    for (const { wanted, raw, weight } of targetsOf(stage, filter, camera)) {
      for (let i = 0; i < draws; i++) {
        const mean = [0, 0, 0];
        for (let pixel = 0; pixel < 4; pixel++) {
          const [r, g, b] = ([0, 1, 2] as const).map((k) => {
            const { value, variance } = capture(recorder, k, raw[k]);
            return value + 2 * Math.sqrt(variance) * normal();
          });
          fromRaw.forEach(([x, y, z], k) => {
            mean[k] += coded(x * r + y * g + z * b) / 4;
          });
        }
        const seen = xyzOfPicture(mean[0], mean[1], mean[2]);
        sum += weight * deltaE00(labOf(wanted, WHITE_D65), labOf(seen, WHITE_D65));
      }
      weights += weight * draws;
    }
    return sum / weights;
  }

  it.each(CASES)(
    "is what a simulation of each pixel and its code values gives, within 5 %%: $name",
    ({ scene, filter }) => {
      const stage = stageOf(scene);
      const camera = cameraState(scene, NOMINAL, "in_camera");
      const ratio =
        meritOf(stage, filter, camera, "in_camera").delta_e00 / looked(stage, filter, camera, 100);
      expect(Math.abs(ratio - 1)).toBeLessThan(0.05);
    },
  );
});
