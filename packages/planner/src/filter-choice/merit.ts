/**
 * What a filter is judged by: the colour error that is left after the camera and a grade have done what they can.
 *
 * The 24-patch chart, lit as the subject is, is seen through water with its haze, filter and lens; the camera balances white
 * within its reach and exposes as its limits allow, so that a white card just fills the scale, with neutral density taken for
 * granted where there is too much light, so that no colour filter wins by being dark; photons, read noise and code values follow;
 * one 3 x 3 matrix with a black level, fitted with the noise in view, grades the recording towards the chart under D65. The merit
 * is the mean CIEDE2000, noise included, over the chart and the open water behind it, whose hue should stay what an adapted eye
 * would see.
 */
import {
  CHART_PATCHES,
  deltaE00,
  integrateProduct,
  type Lab,
  labOf,
  multiply,
  power,
  type Spectrum,
  type Xyz,
} from "@sunfathom/optics";
import type { Balance } from "../camera/balance-reach.js";
import type { CameraState } from "../camera/camera-state.js";
import { WHITE_D65, xyzUnderD65 } from "../camera/d65.js";
import type { Settings } from "../camera/exposure-settings.js";
import { fitGrade, type Grade, graded } from "../camera/grade.js";
import { perPlace, type Vector3 } from "../camera/matrix.js";
import { record } from "../camera/recording.js";
import { rawOf } from "../camera/sensor-profile.js";
import { redShareAbove600, takeShot } from "../camera/shot.js";
import { checkpoint } from "../checkpoint.js";
import type { Stage } from "../light/stage.js";
import { mapBoth } from "../lists/non-empty.js";

export interface Merit {
  /** Mean CIEDE2000 over chart and background. */
  delta_e00: number;
  balance: Balance;
  settings: Settings;
  /** What neutral density has to take where there is too much light at the least sensitive settings, in stops. */
  neutral_stops: number;
  /** Share of the red channel's signal that comes from above 600 nm. */
  red_above_600_nm_share: number;
}

const CHART = CHART_PATCHES.map((patch) => {
  const xyz = xyzUnderD65(patch.reflectance);
  return { xyz, lab: labOf(xyz, WHITE_D65) };
});
/** Open water counts as much as four patches: it fills much of the frame, and with one hue. */
const BACKGROUND_WEIGHT = 4;
/** Where cubature of degree three samples a normal spread in three dimensions, in standard deviations. */
const SAMPLE_AT = Math.sqrt(3);
const CHANNELS = [0, 1, 2] as const;

/** Weight that makes equal squares of XYZ error about equally visible at all lightnesses: slope of L* with Y, squared. */
const visibility = (Y: number): number => power(Y + 0.02, -4 / 3);

interface Seen {
  wantedXyz: Xyz;
  wantedLab: Lab;
  weight: number;
  from: Vector3;
  variance: Vector3;
}

export function meritOf(stage: Stage, filter: Spectrum, camera: CameraState): Merit {
  checkpoint();
  const { profile } = camera;
  const { subject, haze, balance, recorder } = takeShot(stage, filter, camera);
  const see = (raw: Vector3, wantedXyz: Xyz, wantedLab: Lab, weight: number): Seen => {
    const [red, green, blue] = perPlace((k) => record(recorder, k, raw[k]));
    return {
      wantedXyz,
      wantedLab,
      weight,
      from: [red.value, green.value, blue.value],
      variance: [red.variance, green.variance, blue.variance],
    };
  };

  const seen = mapBoth(profile.patchResponses, CHART, ([red, green, blue], { xyz, lab }) => {
    const raw: Vector3 = [
      integrateProduct(subject, red) / profile.unit + haze[0],
      integrateProduct(subject, green) / profile.unit + haze[1],
      integrateProduct(subject, blue) / profile.unit + haze[2],
    ];
    return see(raw, xyz, lab, 1);
  });
  if (stage.background) {
    const { openWater, colour, againstSubject } = stage.background;
    const [X, Y, Z] = xyzUnderD65(colour);
    const wanted: Xyz = [X * againstSubject, Y * againstSubject, Z * againstSubject];
    const raw = rawOf(profile, multiply(openWater, filter));
    seen.push(see(raw, wanted, labOf(wanted, WHITE_D65), BACKGROUND_WEIGHT));
  }
  const grade = fitGrade(
    seen.map(({ from, wantedXyz, variance, weight }) => ({
      from,
      to: wantedXyz,
      variance,
      weight: weight * visibility(wantedXyz[1]),
    })),
  );
  const total = seen.reduce((sum, target) => sum + target.weight * expectedError(target, grade), 0);
  return {
    delta_e00: total / seen.reduce((sum, { weight }) => sum + weight, 0),
    balance,
    settings: recorder.settings,
    neutral_stops: recorder.neutral_stops,
    red_above_600_nm_share: redShareAbove600(profile.sensor, subject),
  };
}

/** Mean CIEDE2000 of one target over its noise. */
function expectedError({ wantedLab, from, variance }: Seen, grade: Grade): number {
  let sum = 0;
  for (const k of CHANNELS) {
    const spread = SAMPLE_AT * Math.sqrt(variance[k]);
    for (const shift of [-spread, spread]) {
      const noisy: Vector3 = [
        k === 0 ? from[0] + shift : from[0],
        k === 1 ? from[1] + shift : from[1],
        k === 2 ? from[2] + shift : from[2],
      ];
      sum += deltaE00(wantedLab, labOf(graded(grade, noisy), WHITE_D65));
    }
  }
  return sum / 6;
}
