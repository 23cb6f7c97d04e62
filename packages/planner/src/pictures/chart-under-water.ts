import { CHART_PATCHES, CLEAR, deltaE00, type Lab, labOf, type Spectrum, type Xyz } from "@sunfathom/optics";
import { kelvinGains } from "../camera/balance-reach.js";
import { type CameraState, cameraState } from "../camera/camera-state.js";
import { WHITE_D65, xyzUnderD65 } from "../camera/d65.js";
import { pictureOfXyz } from "../camera/picture.js";
import type { NamedFilter } from "../codes/named-filter.js";
import { candidateFilter, named } from "../filter-choice/candidates.js";
import { type ChartSeen, chartSeen, expectedError } from "../filter-choice/merit.js";
import { finishOf } from "../filter-choice/merits.js";
import { type Stage, stageAt } from "../light/stage.js";
import { underwater } from "../light/underwater.js";
import type { Finish, Scene } from "../scene/scene.js";
import { NOMINAL } from "../uncertainty/nuisance.js";
import type { LinearRgb } from "./linear-rgb.js";
import { shownFilter } from "./shown-filter.js";

/** A picture of the chart: each patch, in the order of the figures. */
export interface ChartPicture {
  patches: LinearRgb[];
  /** Mean CIEDE2000 of the patches as they are recorded, noise included: pushed colours bring their noise along. */
  delta_e00: number;
  /** The same of the patches as they are drawn, without noise. */
  drawn_delta_e00: number;
}

/** The same light, the same chart: as the camera stores it unbalanced, balanced under water, and as it is finished. */
export interface ChartStages {
  daylight: ChartPicture;
  balanced: ChartPicture;
  finished: ChartPicture;
}

export interface ChartUnderWater {
  depth_m: number;
  finish: Exclude<Finish, "in_camera">;
  /** The filter of the lower row: the advised one, or the best of those that are not. */
  filter: NamedFilter;
  is_advised: boolean;
  /** By hue, greys last, the lightest first. */
  truth: LinearRgb[];
  /** How many are greys. */
  grey_count: number;
  without: ChartStages;
  filtered: ChartStages;
}

/** Colour temperature of a camera's daylight setting: common practice, no published source. */
export const DAYLIGHT_K = 5500;
/** Chroma below which a patch is a grey. */
const GREY_BELOW = 2;

const TRUTH = CHART_PATCHES.map(({ reflectance }, place) => {
  const xyz = xyzUnderD65(reflectance);
  return { place, xyz, lab: labOf(xyz, WHITE_D65) };
});
const chroma = ([, a, b]: Lab): number => Math.hypot(a, b);
const hue = ([, a, b]: Lab): number => (Math.atan2(b, a) + 2 * Math.PI) % (2 * Math.PI);
const GREYS = TRUTH.filter(({ lab }) => chroma(lab) < GREY_BELOW).sort((a, b) => b.lab[0] - a.lab[0]);
const ORDER = [
  ...TRUTH.filter(({ lab }) => chroma(lab) >= GREY_BELOW).sort((a, b) => hue(a.lab) - hue(b.lab)),
  ...GREYS,
];

const rgb = (xyz: Xyz): LinearRgb => pictureOfXyz(xyz);

function pictureOf({ seen, finished }: ChartSeen): ChartPicture {
  const shown = ORDER.map(({ place, lab }) => {
    const patch = seen[place];
    if (patch === undefined) throw new RangeError("the chart has more patches than were seen");
    const xyz = finished(...patch.from);
    return {
      rgb: rgb(xyz),
      drawn: deltaE00(lab, labOf(xyz, WHITE_D65)),
      recorded: expectedError(patch, finished),
    };
  });
  const mean = (of: "drawn" | "recorded") => shown.reduce((sum, patch) => sum + patch[of], 0) / shown.length;
  return {
    patches: shown.map((patch) => patch.rgb),
    delta_e00: mean("recorded"),
    drawn_delta_e00: mean("drawn"),
  };
}

function stagesOf(
  stage: Stage,
  filter: Spectrum,
  cameraFor: (finish: Finish) => CameraState,
  finish: ChartUnderWater["finish"],
): ChartStages {
  const camera = cameraFor("in_camera");
  const balanced = chartSeen(stage, filter, camera, { finish: "in_camera" });
  const { settings, neutral_stops } = balanced.shot.recorder;
  const unbalanced: CameraState = { ...camera, balance: { gains: kelvinGains(camera.profile, DAYLIGHT_K) } };
  return {
    daylight: pictureOf(
      chartSeen(stage, filter, unbalanced, { finish: "in_camera", given: { settings, neutral_stops } }),
    ),
    balanced: pictureOf(balanced),
    finished: pictureOf(chartSeen(stage, filter, cameraFor(finish), { finish })),
  };
}

/**
 * The chart in the middle of the filmed depths, without and with the filter that `filter-choice` advises there.
 * @throws SceneProblem as `filterChoice` does
 */
export function chartUnderWater(scene: Scene): ChartUnderWater {
  const { conditions, candidate, is_advised, depth_m } = shownFilter(scene);
  const stage = stageAt(underwater(conditions, NOMINAL), depth_m);
  const finish = finishOf(scene) === "matched" ? "matched" : "basic_edit";
  const cameraFor = (judged: Finish) => cameraState(scene, NOMINAL, judged);
  return {
    depth_m,
    finish,
    filter: named(candidate),
    is_advised,
    truth: ORDER.map(({ xyz }) => rgb(xyz)),
    grey_count: GREYS.length,
    without: stagesOf(stage, CLEAR, cameraFor, finish),
    filtered: stagesOf(stage, candidateFilter(candidate, NOMINAL), cameraFor, finish),
  };
}
