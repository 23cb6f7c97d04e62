/**
 * The filter's merit as it was before it was made fast: what the fast one is held to (see README.md).
 *
 * What a filter is judged by: the colour error that is left in the picture as it is finished.
 *
 * The 24-patch chart, lit as the subject is, is seen through water with its haze, filter and lens; the camera balances white
 * within its reach and exposes as its limits allow, with neutral density taken for granted where there is too much light, so that
 * no colour filter wins by being dark; photons, read noise, clipping and code values follow, and then the finish. The merit is the
 * mean CIEDE2000, noise included, over the chart and the open water behind it, whose hue should stay what an adapted eye would see.
 *
 * `in_camera` and `basic_edit` start from the picture that the camera makes by its own matrix, exposed on a grey card as it meters
 * one: haze lies on the card as on all else, greys are as light as they are, and what is black is not. `matched` starts from what
 * was recorded, exposed so that a white card just fills the scale.
 */
import {
  CHART_PATCHES,
  integrateProduct,
  type Lab,
  labOf,
  multiply,
  type Spectrum,
  type Xyz,
} from "@sunfathom/optics";
import type { Balance } from "../../../packages/planner/src/camera/balance-reach.js";
import type { CameraState } from "../../../packages/planner/src/camera/camera-state.js";
import { WHITE_D65, xyzUnderD65 } from "../../../packages/planner/src/camera/d65.js";
import type { Settings } from "../../../packages/planner/src/camera/exposure-settings.js";
import { apply, perPlace, type Vector3 } from "../../../packages/planner/src/camera/matrix.js";
import { clipped, type PictureMatrix, pictureMatrix } from "../../../packages/planner/src/camera/picture.js";
import {
  capture,
  codeVariance,
  type Recorder,
  record,
} from "../../../packages/planner/src/camera/recording.js";
import { rawOf } from "../../../packages/planner/src/camera/sensor-profile.js";
import {
  type Exposure,
  redShareAbove600,
  type Shot,
  takeShot,
} from "../../../packages/planner/src/camera/shot.js";
import { checkpoint } from "../../../packages/planner/src/checkpoint.js";
import { basicEdit } from "../../../packages/planner/src/filter-choice/finish/basic-edit.js";
import { inCamera } from "../../../packages/planner/src/filter-choice/finish/in-camera.js";
import { matched } from "../../../packages/planner/src/filter-choice/finish/matched.js";
import type { Finished, Seen } from "../../../packages/planner/src/filter-choice/finish/seen.js";
import type { Stage } from "../../../packages/planner/src/light/stage.js";
import { mapBoth } from "../../../packages/planner/src/lists/non-empty.js";
import type { Finish } from "../../../packages/planner/src/scene/scene.js";
import { deltaE00 } from "./ciede2000.js";

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
/** Which patches of the chart are greys. */
const IS_GREY = CHART.map(({ lab: [, a, b] }) => Math.hypot(a, b) < 2);
/** Open water counts as much as four patches: it fills much of the frame, and with one hue. */
const BACKGROUND_WEIGHT = 4;
/** Where cubature of degree three samples a normal spread in three dimensions, in standard deviations. */
const SAMPLE_AT = Math.sqrt(3);

/** What is recorded, the patches of the chart first, in its order. */
export interface ChartRecorded {
  shot: Shot;
  seen: readonly Seen[];
}

/** The same with what a finish makes of it. */
export interface ChartSeen extends ChartRecorded {
  finished: Finished;
}

/** Recorded values with their variances. */
type Recorded = Pick<Seen, "from" | "variance">;

/** As recorded, channel by channel. */
function recorded(recorder: Recorder, raw: Vector3): Recorded {
  const [red, green, blue] = perPlace((k) => record(recorder, k, raw[k]));
  return {
    from: [red.value, green.value, blue.value],
    variance: [red.variance, green.variance, blue.variance],
  };
}

/** As the camera's picture stores it: code values come after its matrix, and their noise is led back to where it would come from. */
function pictured(recorder: Recorder, { fromRaw, varianceBack }: PictureMatrix, raw: Vector3): Recorded {
  const red = capture(recorder, 0, raw[0]);
  const green = capture(recorder, 1, raw[1]);
  const blue = capture(recorder, 2, raw[2]);
  const from: Vector3 = [red.value, green.value, blue.value];
  const [storedR, storedG, storedB] = clipped(apply(fromRaw, from));
  const [r, g, b] = apply(varianceBack, [
    codeVariance(recorder, storedR),
    codeVariance(recorder, storedG),
    codeVariance(recorder, storedB),
  ]);
  return { from, variance: [red.variance + r, green.variance + g, blue.variance + b] };
}

/** The greys of the chart, among what is seen. */
export const greysIn = (seen: readonly Seen[]): Seen[] => seen.filter((_, place) => IS_GREY[place]);

function finishedBy(finish: Finish, seen: readonly Seen[], matrix: PictureMatrix): Finished {
  if (finish === "matched") return matched(seen);
  if (finish === "in_camera") return inCamera(matrix);
  return basicEdit(seen, greysIn(seen), matrix);
}

/** What a finish is for, and an exposure in place of the metered one. */
interface Taken {
  finish: Finish;
  given?: Exposure;
}

/**
 * The chart, and the open water behind it, as a camera records them and a finish makes of them.
 * @param camera as it meters for that finish (see `cameraState`)
 */
export function chartSeen(stage: Stage, filter: Spectrum, camera: CameraState, taken: Taken): ChartSeen {
  const recorded = chartRecorded(stage, filter, camera, taken);
  return {
    ...recorded,
    finished: finishedBy(taken.finish, recorded.seen, pictureMatrix(camera.profile)),
  };
}

/** The same as recorded: what is burnt out or black all over fits no finish of its own. */
export function chartRecorded(
  stage: Stage,
  filter: Spectrum,
  camera: CameraState,
  { finish, given }: Taken,
): ChartRecorded {
  const { profile } = camera;
  const shot = takeShot(stage, filter, camera, given);
  const { subject, haze, recorder } = shot;
  const matrix = pictureMatrix(profile);
  const recordOf = (raw: Vector3): Recorded =>
    finish === "matched" ? recorded(recorder, raw) : pictured(recorder, matrix, raw);
  const see = (raw: Vector3, wantedXyz: Xyz, wantedLab: Lab, weight: number): Seen => {
    const { from, variance } = recordOf(raw);
    return { wantedXyz, wantedLab, weight, from, variance };
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
  return { shot, seen };
}

/** @param camera as it meters for that finish (see `cameraState`) */
export function meritOf(stage: Stage, filter: Spectrum, camera: CameraState, finish: Finish): Merit {
  checkpoint();
  const {
    shot: { subject, balance, recorder },
    seen,
    finished,
  } = chartSeen(stage, filter, camera, { finish });
  return {
    delta_e00: errorOf(seen, finished),
    balance,
    settings: recorder.settings,
    neutral_stops: recorder.neutral_stops,
    red_above_600_nm_share: redShareAbove600(camera.profile.sensor, subject),
  };
}

/** Mean CIEDE2000 over all that is seen. */
export function errorOf(seen: readonly Seen[], finished: Finished): number {
  const total = seen.reduce((sum, target) => sum + target.weight * expectedError(target, finished), 0);
  return total / seen.reduce((sum, { weight }) => sum + weight, 0);
}

/** Mean CIEDE2000 of one target over its noise. */
export function expectedError({ wantedLab, from, variance }: Seen, finished: Finished): number {
  const [r, g, b] = from;
  const [inR, inG, inB] = perPlace((k) => SAMPLE_AT * Math.sqrt(variance[k]));
  const error = (red: number, green: number, blue: number): number =>
    deltaE00(wantedLab, labOf(finished(red, green, blue), WHITE_D65));
  const sum =
    error(r - inR, g, b) +
    error(r + inR, g, b) +
    error(r, g - inG, b) +
    error(r, g + inG, b) +
    error(r, g, b - inB) +
    error(r, g, b + inB);
  return sum / 6;
}
