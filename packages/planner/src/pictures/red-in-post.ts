/**
 * One red patch and a white card in falling light, recorded without and with a filter, each at the settings that suit it and at those
 * that suit the other, and pushed afterwards until red, white and black are right: with the noise and the code values that each has.
 */
import { CHART_PATCHES, CLEAR, integrateProduct, type Spectrum, stopsToDensity } from "@sunfathom/optics";
import { type CameraState, cameraState } from "../camera/camera-state.js";
import { codeShare } from "../camera/code-curve.js";
import { xyzUnderD65 } from "../camera/d65.js";
import { exposePixels } from "../camera/expose-pixels.js";
import { FITS_WITHIN_STOPS, type Settings } from "../camera/exposure-settings.js";
import { fitGrade, type Grade, graded } from "../camera/grade.js";
import { perPlace, type Vector3 } from "../camera/matrix.js";
import { pictureOfXyz } from "../camera/picture.js";
import { highestCode, type Recorder, record, shareOfFullScale } from "../camera/recording.js";
import { type Exposure, type Shot, takeShot } from "../camera/shot.js";
import { checkpoint } from "../checkpoint.js";
import type { RedQuality } from "../codes/colour-recovery.js";
import type { NamedFilter } from "../codes/named-filter.js";
import { qualityOf } from "../colour-recovery/record-grey.js";
import { candidateFilter, named } from "../filter-choice/candidates.js";
import { type Stage, stageAt } from "../light/stage.js";
import { underwater } from "../light/underwater.js";
import type { Scene } from "../scene/scene.js";
import { NOMINAL } from "../uncertainty/nuisance.js";
import type { LinearRgb } from "./linear-rgb.js";
import { shownFilter } from "./shown-filter.js";

/** Squares of a picture: columns from full light to the dimmest, rows of the red patch over rows of the white card. */
export const RED_SQUARES = { columns: 44, red_rows: 12, white_rows: 6 } as const;
/** Of the truth: of the same shape, without visible steps. */
export const TRUE_SQUARES = { columns: 176, red_rows: 2, white_rows: 1 } as const;
/** Stops that the light falls by from the first column to the last. */
export const FALLS_BY_STOPS = 3;

/** Places in the table of the chart: its red, and its greys from white on. */
const RED = 14;
const WHITE = 18;
/** A stop more light makes a picture cleaner by so much; less is hardly seen. Judgement, no published source. */
const CLEARLY_CLEANER = Math.SQRT2;
/** Of what the push must hold, against one patch of the chart. */
const HELD = 1e6;

export interface RedWay {
  filtered: boolean;
  /** Whose settings these are. */
  settings_for: "no_filter" | "filter";
  settings: Settings;
  /** Of a neutral filter in front of the lens, where there is too much light. */
  neutral_density?: number;
  /** Exposure over the one that suits this picture, stops. */
  off_by_stops: number;
  quality: RedQuality;
  /** Whether the white card in full light runs over the top of a channel. */
  is_clipped: boolean;
  /** Of the red of the patch in full light once it is pushed, per pixel that is looked at. */
  red_signal_to_noise: number;
  /** Steps of the red channel's code values between the patch in full light and where the light ends. */
  red_steps: number;
  /** Row by row. */
  squares: LinearRgb[];
}

/**
 * What it comes down to, by the picture without a filter and the one through it, each as it suits it: red is less than its noise both
 * ways; clean without a filter; cleaner through it; or as noisy either way.
 */
export type RedVerdict = "gone" | "clean_without" | "cleaner_through_filter" | "alike";

export interface RedInPost {
  depth_m: number;
  verdict: RedVerdict;
  /** Signal over noise of red through the filter, over that without. */
  cleaner_by: number;
  filter: NamedFilter;
  is_advised: boolean;
  bits: number;
  /** The same in truth, by `TRUE_SQUARES`. */
  truth: LinearRgb[];
  /** No filter and filter at the settings for no filter, then both at those for the filter. */
  ways: [bare: RedWay, darker: RedWay, brighter: RedWay, filtered: RedWay];
}

const rgbOf = (patch: number): LinearRgb => {
  const reflectance = CHART_PATCHES[patch]?.reflectance;
  if (reflectance === undefined) throw new RangeError("the chart has fewer patches");
  return pictureOfXyz(xyzUnderD65(reflectance));
};
const TRUTH = CHART_PATCHES.map((_, place) => rgbOf(place));

interface Layout {
  columns: number;
  red_rows: number;
  white_rows: number;
}

/** Light on a column, of that on the first. */
const lightOn = (column: number, columns: number): number =>
  2 ** ((-FALLS_BY_STOPS * column) / (columns - 1));

function squares(
  { columns, red_rows, white_rows }: Layout,
  colourOf: (patch: number, light: number) => LinearRgb,
): LinearRgb[] {
  return Array.from({ length: columns * (red_rows + white_rows) }, (_, i) => {
    const patch = Math.floor(i / columns) < red_rows ? RED : WHITE;
    return colourOf(patch, lightOn(i % columns, columns));
  });
}

/** Stops of light on the sensor, times its sensitivity. */
const exposureStops = ({ settings: { iso, f_number, shutter_s }, neutral_stops }: Exposure): number =>
  Math.log2((iso * shutter_s) / f_number ** 2) - neutral_stops;
/** Those at which a shot that was metered would be exposed as it should. */
const wantedStops = (shot: Exposure): number =>
  exposureStops(shot) - shot.settings.off_by_stops + shot.neutral_stops;

/** What is in front of the lens, and what is in the picture behind it. */
interface Front {
  filtered: boolean;
  filter: Spectrum;
  shot: Shot;
  /** Raw exposure in lux of a patch with so much of the light on it, haze included. */
  raw: (patch: number, light: number) => Vector3;
}

function frontOf(stage: Stage, camera: CameraState, filter: Spectrum, filtered: boolean): Front {
  const shot = takeShot(stage, filter, camera);
  const { profile } = camera;
  const direct = profile.patchResponses.map((response) =>
    perPlace((k) => integrateProduct(shot.subject, response[k]) / profile.unit),
  );
  return {
    filtered,
    filter,
    shot,
    raw: (patch, light) => perPlace((k) => (direct[patch]?.[k] ?? 0) * light + shot.haze[k]),
  };
}

/** What a recording without top, noise and codes would hold. */
const unlimited = ({ settings, gains, neutral_stops }: Recorder, raw: Vector3): Vector3 =>
  perPlace((k) => gains[k] * shareOfFullScale(raw[k] * 2 ** -neutral_stops, settings));

/** The grade that makes red, white and black right, and all else as right as noise lets it. */
function pushed({ raw }: Front, recorder: Recorder): Grade {
  const target = (from: Vector3, to: Vector3, weight: number, variance: Vector3 = [0, 0, 0]) => ({
    from: unlimited(recorder, from),
    to,
    weight,
    variance,
  });
  return fitGrade([
    ...TRUTH.map((to, place) => {
      const exposure = raw(place, 1);
      return target(
        exposure,
        to,
        1,
        perPlace((k) => record(recorder, k, exposure[k]).variance),
      );
    }),
    ...[RED, WHITE].map((place) => target(raw(place, 1), rgbOf(place), HELD)),
    target(raw(RED, 0), [0, 0, 0], HELD),
  ]);
}

function verdictOf([bare, , , filtered]: RedInPost["ways"]): Pick<RedInPost, "verdict" | "cleaner_by"> {
  // Of what neither picture holds, neither is cleaner.
  const cleaner_by =
    bare.red_signal_to_noise > 0 ? filtered.red_signal_to_noise / bare.red_signal_to_noise : 1;
  const verdict =
    bare.quality === "gone" && filtered.quality === "gone"
      ? "gone"
      : bare.quality === "excellent"
        ? "clean_without"
        : cleaner_by >= CLEARLY_CLEANER
          ? "cleaner_through_filter"
          : "alike";
  return { verdict, cleaner_by };
}

/**
 * The red patch in the middle of the filmed depths, four ways, without and with the filter that `filter-choice` advises there.
 * @param random even between 0 and 1: the noise is drawn with it
 * @throws SceneProblem as `filterChoice` does
 */
export function redInPost(scene: Scene, random: () => number): RedInPost {
  const { conditions, candidate, is_advised, depth_m } = shownFilter(scene);
  const stage = stageAt(underwater(conditions, NOMINAL), depth_m);
  // Exposed for the most that a grade can make of it.
  const camera = cameraState(scene, NOMINAL, "matched");
  const bare = frontOf(stage, camera, CLEAR, false);
  const behind = frontOf(stage, camera, candidateFilter(candidate, NOMINAL), true);

  function way(front: Front, { settings, neutral_stops }: Exposure, filtered: boolean): RedWay {
    checkpoint();
    const recorder: Recorder = { ...front.shot.recorder, settings, neutral_stops };
    const grade = pushed(front, recorder);
    const [red, green, blue] = perPlace((k) => record(recorder, k, front.raw(RED, 1)[k]));
    const [intoRed] = grade.matrix;
    const noise = Math.hypot(
      ...[red, green, blue].map(({ variance }, k) => (intoRed[k] ?? 0) * Math.sqrt(variance)),
    );
    // What the push makes of red over black: less than the patch has where noise holds it back, nothing where haze is all there is.
    const [lit, black] = [1, 0].map((light) => graded(grade, unlimited(recorder, front.raw(RED, light)))[0]);
    const red_signal_to_noise = noise > 0 ? Math.max(0, (lit ?? 0) - (black ?? 0)) / noise : 0;
    const codeAt = (light: number): number =>
      Math.round(
        codeShare(recorder.curve, record(recorder, 0, front.raw(RED, light)[0]).value) *
          highestCode(recorder.bits),
      );
    return {
      filtered: front.filtered,
      settings_for: filtered ? "filter" : "no_filter",
      settings,
      ...(neutral_stops > FITS_WITHIN_STOPS ? { neutral_density: stopsToDensity(neutral_stops) } : {}),
      off_by_stops: exposureStops(recorder) - wantedStops(front.shot.recorder),
      is_clipped: Math.max(...unlimited(recorder, front.raw(WHITE, 1))) > 1.05,
      red_signal_to_noise,
      quality: qualityOf(red_signal_to_noise),
      red_steps: codeAt(1) - codeAt(2 ** -FALLS_BY_STOPS),
      squares: squares(RED_SQUARES, (patch, light) =>
        graded(grade, exposePixels(recorder, front.raw(patch, light), random)),
      ),
    };
  }

  const [forBare, forFilter] = [bare.shot.recorder, behind.shot.recorder];
  const ways: RedInPost["ways"] = [
    way(bare, forBare, false),
    way(behind, forBare, false),
    way(bare, forFilter, true),
    way(behind, forFilter, true),
  ];
  return {
    depth_m,
    ...verdictOf(ways),
    filter: named(candidate),
    is_advised,
    bits: scene.bits,
    truth: squares(TRUE_SQUARES, (patch, light) => perPlace((k) => rgbOf(patch)[k] * light)),
    ways,
  };
}
