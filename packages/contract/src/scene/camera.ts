import { z } from "zod/v3";
import { choice, list } from "../field/choice.js";
import { quantity } from "../field/quantity.js";
import { sceneDefaults } from "./defaults.js";
import { shortestShutter_s } from "./shutter.js";
import { cameraClasses, exposureModes, finishes, recordingCurves, whiteBalanceModes } from "./values.js";

export const RecordingCurve = z
  .enum(recordingCurves)
  .describe(
    "How code values are spread over light: `rec709` as ITU-R BT.709, `log` evenly over stops, `linear` evenly over light, `hlg` as the hybrid log-gamma of ITU-R BT.2100.",
  );

export const CameraClass = z
  .enum(cameraClasses)
  .describe(
    "Cameras by their size: `phone`, `phone_merged` (a still that a phone merges from several frames), `action`, `compact`, `interchangeable` (lenses), `cinema`.",
  );

export const RecordingPoint = z
  .object({
    light_share: quantity({
      description: "Light, as a share of the brightest that is recorded.",
      unit: "1",
      min: 0,
      max: 1,
      example: 0.18,
    }),
    code_share: quantity({
      description: "Code value that it is stored as, as a share of the highest.",
      unit: "1",
      min: 0,
      max: 1,
      example: 0.41,
    }),
  })
  .strict()
  .describe("A point of a recording curve.");

export const WhiteBalanceMode = z
  .enum(whiteBalanceModes)
  .describe(
    "How the camera gets its white balance: `card` (measured on a white or grey card at depth), `kelvin` (set to `white_balance_kelvin_K` and left there), `auto` (chosen by the camera).",
  );

export const ExposureMode = z
  .enum(exposureModes)
  .describe(
    "How the camera is exposed: `manual` (for the subject) or `auto` (for the mean of the picture, open water and all).",
  );

export const Finish = z
  .enum(finishes)
  .describe(
    "What happens to a picture before anyone looks at it: `in_camera` (nothing), `basic_edit` (balance, exposure, black level, saturation), `matched` (a grade fitted to a colour chart that you filmed).",
  );

const iso = { unit: "1", min: 25, max: 409600 } as const;
const fNumber = { unit: "1", min: 0.7, max: 64 } as const;
const kelvin = { unit: "K", min: 1500, max: 20000 } as const;

const kind = {
  camera_class: choice(CameraClass, {
    description:
      "The kind of camera. It decides how much light a pixel holds, how noisy it is, how many pixels make one pixel of the finished picture, and the limits of aperture and white balance where you do not give them: all from memory of cameras.",
    example: "action",
    default: sceneDefaults.camera_class,
  }),
};

/** A default that goes by `camera_class`, in words: beside it the description has no other. */
const byClass = (plain: string, others: string): string =>
  `${plain} by default; by \`camera_class\` ${others} (from memory).`;

const exposure = {
  iso: quantity({
    ...iso,
    description: "ISO speed that the camera is fixed at. Free between `min_iso` and `max_iso` when left out.",
    example: 400,
  }),
  min_iso: quantity({
    ...iso,
    description: "Lowest ISO speed of the camera.",
    example: 200,
    default: sceneDefaults.min_iso,
  }),
  max_iso: quantity({
    ...iso,
    description: "Highest ISO speed that you accept.",
    example: 3200,
    default: sceneDefaults.max_iso,
  }),
  f_number: quantity({
    ...fNumber,
    description:
      "Aperture that the lens is fixed at. Free between `min_f_number` and `max_f_number` when left out.",
    example: 5.6,
  }),
  min_f_number: quantity({
    ...fNumber,
    description: `Widest aperture of the lens. ${byClass("2.8", "1.8 for a phone")}`,
    example: 2.8,
  }),
  max_f_number: quantity({
    ...fNumber,
    description: `Narrowest aperture of the lens. ${byClass("16", "1.8 for a phone and 2.8 for an action camera, which cannot change it")}`,
    example: 16,
  }),
  shutter_s: quantity({
    description: "Exposure time of a frame. Not with `shutter_angle_deg`.",
    unit: "s",
    min: shortestShutter_s,
    max: 60,
    example: 0.02,
  }),
};

const frameRate = {
  frame_rate_fps: quantity({
    description:
      "Frames per second: no exposure can last longer than a frame. Without `shutter_s`, the exposure time follows from it and `shutter_angle_deg`.",
    unit: "1",
    min: 1,
    max: 1000,
    example: 25,
    default: sceneDefaults.frame_rate_fps,
  }),
};

const angle = {
  shutter_angle_deg: quantity({
    description:
      "Part of a frame's time that is exposed, as an angle: 360 for all of it. With `frame_rate_fps` in place of `shutter_s`.",
    unit: "deg",
    min: 1,
    max: 360,
    example: 180,
    default: sceneDefaults.shutter_angle_deg,
  }),
};

const recording = {
  bits: quantity({
    description: "Bits per channel of the recording.",
    unit: "bit",
    min: 8,
    max: 16,
    integer: true,
    example: 8,
    default: sceneDefaults.bits,
  }),
  recording_curve: choice(RecordingCurve, {
    description: "How the recording spreads its code values over light.",
    example: "log",
    default: sceneDefaults.recording_curve,
  }),
  recording_curve_points: list(RecordingPoint, {
    description:
      "The recording's own curve, in place of `recording_curve`: 2 to 64 points, light and code values rising (codes by 0.001 at least), from no light to the brightest (`light_share` 0 to 1). Straight between points.",
    minItems: 2,
    maxItems: 64,
    example: [
      { light_share: 0, code_share: 0.06 },
      { light_share: 0.18, code_share: 0.4 },
      { light_share: 1, code_share: 0.95 },
    ],
  }),
  finish: choice(Finish, {
    description: "What you do with the pictures afterwards. Filters are judged by the colour error after it.",
    example: "basic_edit",
    default: sceneDefaults.finish,
  }),
  exposure_mode: choice(ExposureMode, {
    description:
      "Whether you set the exposure for the subject, or the camera meters the whole picture on its own. In `auto` it may also shorten the exposure time.",
    example: "auto",
    default: sceneDefaults.exposure_mode,
  }),
  white_balance_mode: choice(WhiteBalanceMode, {
    description:
      "How the camera gets its white balance. `auto` takes the mean of subject, sea floor and open water for grey (Buchsbaum 1980), as far as the limits of its balance go.",
    example: "auto",
    default: sceneDefaults.white_balance_mode,
  }),
  white_balance_kelvin_K: quantity({
    ...kelvin,
    description:
      "What you set the white balance to, between its limits. Only, and always, with `white_balance_mode` `kelvin`.",
    example: 5600,
  }),
  white_balance_min_cct_K: quantity({
    ...kelvin,
    description: `Lowest colour temperature that the white balance reaches. ${byClass("2500 K", "2000 K for a cinema camera")}`,
    example: 2500,
  }),
  white_balance_max_cct_K: quantity({
    ...kelvin,
    description: `Highest colour temperature that the white balance reaches. ${byClass("10000 K", "8000 K for a phone, 15000 K for a cinema camera")}`,
    example: 10000,
  }),
  white_balance_max_duv: quantity({
    description: `Largest distance from the Planckian locus, in CIE 1960 uv, that the white balance can compensate (its tint). ${byClass("0.03", "0.02 for a phone or an action camera, 0.05 for a cinema camera")}`,
    unit: "1",
    min: 0,
    max: 0.1,
    example: 0.03,
  }),
  balance_tolerance_delta_e00: quantity({
    description:
      "Colour shift to allow before you set the white balance again (CIEDE2000). By default the model's own, a judgement; the answer says which.",
    unit: "1",
    min: 0.5,
    max: 50,
    example: 8,
  }),
};

/** As a caller gives them. */
export const cameraFields = { ...kind, ...exposure, ...frameRate, ...angle, ...recording };

/** As the resolved scene holds them: the exposure time in seconds, whichever way it was given. */
export const resolvedCameraFields = { ...kind, ...exposure, ...frameRate, ...recording };
