import { CHART_PATCHES, CLEAR, deltaE00, labOf, type Spectrum } from "@sunfathom/optics";
import { kelvinGains } from "../camera/balance-reach.js";
import { type CameraState, cameraState } from "../camera/camera-state.js";
import { WHITE_D65, xyzUnderD65 } from "../camera/d65.js";
import { pictureOfXyz } from "../camera/picture.js";
import type { NamedFilter } from "../codes/named-filter.js";
import { candidateFilter, named } from "../filter-choice/candidates.js";
import { chartSeen } from "../filter-choice/merit.js";
import { type Stage, stageAt } from "../light/stage.js";
import { underwater } from "../light/underwater.js";
import type { Scene } from "../scene/scene.js";
import { NOMINAL } from "../uncertainty/nuisance.js";
import { DAYLIGHT_K } from "./chart-under-water.js";
import type { LinearRgb } from "./linear-rgb.js";
import { shownFilter } from "./shown-filter.js";

/** Patches of the strip, by their places in the table of the chart: a middle grey, its red, and the lighter of its two skin-like ones. */
const PATCHES = { grey: 21, red: 14, skin: 1 } as const;
export const STRIP_PATCHES = ["grey", "red", "skin"] as const;
export type StripPatch = (typeof STRIP_PATCHES)[number];

/** Three patches on their way down, as a camera stores them. */
export interface StripColumn {
  /** Depth by depth. */
  colours: Record<StripPatch, LinearRgb>[];
  /** Mean CIEDE2000 of the three at the deepest depth, as they are drawn, without noise. */
  delta_e00: number;
}

export interface ColourStrip {
  /** Middles of rows that reach evenly from the surface to the deepest that is filmed, and that depth. */
  depths_m: number[];
  max_depth_m: number;
  min_depth_m: number;
  truth: Record<StripPatch, LinearRgb>;
  filter: NamedFilter;
  is_advised: boolean;
  /** At the daylight setting; with the white balance set at each depth, without and with the filter. */
  daylight: StripColumn;
  balanced: StripColumn;
  filtered: StripColumn;
}

const ROWS = 20;

const each = <T>(of: (patch: StripPatch) => T): Record<StripPatch, T> => ({
  grey: of("grey"),
  red: of("red"),
  skin: of("skin"),
});

const wanted = each((patch) => {
  const reflectance = CHART_PATCHES[PATCHES[patch]]?.reflectance;
  if (reflectance === undefined) throw new RangeError("the chart has fewer patches");
  return xyzUnderD65(reflectance);
});

function seenAt(stage: Stage, filter: Spectrum, camera: CameraState) {
  const { seen, finished } = chartSeen(stage, filter, camera, { finish: "in_camera" });
  return each((patch) => {
    const found = seen[PATCHES[patch]];
    if (found === undefined) throw new RangeError("the chart has more patches than were seen");
    return finished(...found.from);
  });
}

/**
 * Grey, red and skin from the surface down to the deepest filmed depth, exposed anew at each depth, without and with the filter that
 * `filter-choice` advises.
 * @throws SceneProblem as `filterChoice` does
 */
export function colourStrip(scene: Scene): ColourStrip {
  const { conditions, candidate, is_advised } = shownFilter(scene);
  const { min_depth_m, max_depth_m } = scene;
  const world = underwater(conditions, NOMINAL);
  const camera = cameraState(scene, NOMINAL, "in_camera");
  const unbalanced: CameraState = { ...camera, balance: { gains: kelvinGains(camera.profile, DAYLIGHT_K) } };
  const depths_m = Array.from({ length: ROWS }, (_, i) => ((i + 0.5) * max_depth_m) / ROWS);
  const columnOf = (filter: Spectrum, by: CameraState): StripColumn => {
    const deepest = seenAt(stageAt(world, max_depth_m), filter, by);
    const errors = each((patch) =>
      deltaE00(labOf(wanted[patch], WHITE_D65), labOf(deepest[patch], WHITE_D65)),
    );
    return {
      colours: depths_m.map((depth_m) => {
        const seen = seenAt(stageAt(world, depth_m), filter, by);
        return each((patch) => pictureOfXyz(seen[patch]));
      }),
      delta_e00: (errors.grey + errors.red + errors.skin) / 3,
    };
  };
  return {
    depths_m,
    min_depth_m,
    max_depth_m,
    truth: each((patch) => pictureOfXyz(wanted[patch])),
    filter: named(candidate),
    is_advised,
    daylight: columnOf(CLEAR, unbalanced),
    balanced: columnOf(CLEAR, camera),
    filtered: columnOf(candidateFilter(candidate, NOMINAL), camera),
  };
}
