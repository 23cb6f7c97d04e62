/**
 * What the model says of a site under each sun and sky that a plan meets. Colour error, light and exposure change smoothly with the
 * height of the sun: they are worked out at fixed heights, when first asked for, and drawn straight between them. `light-windows.test.ts`
 * holds how far that is off.
 */
import { illuminance_lx } from "@sunfathom/optics";
import { LossesOfScene } from "../attenuation/losses.js";
import { type Candidate, candidatesFor, NO_FILTER } from "../filter-choice/candidates.js";
import { requireSeenThroughKit } from "../filter-choice/choose.js";
import { type Judged, judgeIn, mayFilterGain, rangeError, sightOf } from "../filter-choice/merits.js";
import { whereRedIsGone } from "../filter-choice/red-is-gone.js";
import { searchFilters } from "../filter-choice/search.js";
import { type Conditions, conditionsOf } from "../light/conditions.js";
import { cardDaylightAt, openWaterAt } from "../light/daylight-at-depth.js";
import { requireLight } from "../light/require-light.js";
import { downwellingAt, lampLightAt, type Underwater, underwater } from "../light/underwater.js";
import { itemAt, mapEach, middleItem, type NonEmpty, nonEmpty, valueAt } from "../lists/non-empty.js";
import type { Scene } from "../scene/scene.js";
import { NOMINAL, type Nuisance } from "../uncertainty/nuisance.js";
import type { WindowAim } from "./objective.js";

/** Heights of the sun at which the model is asked, degrees: closer where a degree changes more. */
const NODES_DEG = [10, 11.5, 13, 15, 17.5, 20, 23, 27, 32, 38, 45, 53, 62, 70, 77, 83, 90];

/** Below it the daylight model does not hold (`light/sun.ts`). */
export const LOWEST_SUN_DEG = itemAt(NODES_DEG, 0);

/** A sun in a sky. */
export interface SunInSky {
  elevation_deg: number;
  cloud_oktas: number;
}

/** What is known under one sun and sky. */
export interface StateFigures {
  /** Mean colour error over the depths behind each candidate, in their order. */
  errors: number[];
  /** log2 of the sensitivity that the camera wants behind each, at the middle of the depths. */
  sensitivities: number[];
  /** Of what the aim wants, stops above any fixed level. */
  light_stops: number;
  /** log2 lux of the light that comes down at the middle of the depths. */
  level: number;
  /** What the red channel loses down to there, stops. */
  red_loss_stops: number;
}

/** Both ends and the middle of the filmed depths, or the one depth that there is. */
export const depthsOfWindows = ({ min_depth_m, max_depth_m }: Scene): NonEmpty<number> =>
  min_depth_m === max_depth_m ? [min_depth_m] : [min_depth_m, (min_depth_m + max_depth_m) / 2, max_depth_m];

/** The scene under a sun and a sky. */
const under = (scene: Scene, { elevation_deg, cloud_oktas }: SunInSky): Scene => ({
  ...scene,
  daylight_basis: "sun",
  sun_elevation_deg: elevation_deg,
  cloud_oktas,
});

const log2Lux = (light: Parameters<typeof illuminance_lx>[0]): number => Math.log2(illuminance_lx(light));

/** Light that the aim wants, log2. */
function lightFor(aim: WindowAim, world: Underwater, depth_m: number): number {
  if (aim === "natural_colour") return log2Lux(downwellingAt(world, depth_m));
  if (aim === "sunlit_background") return log2Lux(openWaterAt(world, depth_m));
  return log2Lux(lampLightAt(world)) - log2Lux(cardDaylightAt(world, depth_m));
}

/** A few filters to choose from: those that are best, or second, somewhere among these suns and skies. */
export function shortlist(scene: Scene, corners: readonly SunInSky[]): NonEmpty<Candidate> {
  const depths = depthsOfWindows(scene);
  const changeable = scene.filter_change_underwater !== "none";
  const found = new Map<string, Candidate>();
  for (const corner of corners) {
    const conditions = conditionsOf(under(scene, corner));
    requireLight(conditions);
    requireSeenThroughKit(conditions);
    const { decision } = searchFilters(conditions, depths, { changeable, candidates: candidatesFor(scene) });
    const { advised, runnerUp, bestFilter = advised } = decision;
    for (const { candidate } of [advised, runnerUp, bestFilter])
      if (candidate.kind !== "none")
        found.set(JSON.stringify([candidate.kind, candidate.density, candidate.id]), candidate);
  }
  return [NO_FILTER, ...found.values()];
}

/** The states of one site. */
export class SunStates {
  readonly depths: NonEmpty<number>;
  readonly #known = new Map<string, StateFigures>();

  constructor(
    readonly scene: Scene,
    readonly aim: WindowAim,
    readonly candidates: NonEmpty<Candidate>,
  ) {
    this.depths = depthsOfWindows(scene);
  }

  conditionsAt(sun: SunInSky): Conditions {
    return conditionsOf(under(this.scene, sun));
  }

  /** How many suns and skies were worked out. */
  get size(): number {
    return this.#known.size;
  }

  /** Between the two heights around a sun. */
  at({ elevation_deg, cloud_oktas }: SunInSky): StateFigures {
    const above = Math.max(
      1,
      NODES_DEG.findIndex((node) => node >= elevation_deg),
    );
    const [low, high] = [itemAt(NODES_DEG, above - 1), itemAt(NODES_DEG, above)];
    const share = (elevation_deg - low) / (high - low);
    const from = this.#node(low, cloud_oktas);
    if (share <= 0) return from;
    return between(from, this.#node(high, cloud_oktas), share);
  }

  /** As it is, without drawing between heights. */
  exactlyAt(sun: SunInSky, nuisance: Nuisance = NOMINAL, candidates = this.candidates): StateFigures {
    return this.#figures(this.conditionsAt(sun), nuisance, candidates);
  }

  #node(elevation_deg: number, cloud_oktas: number): StateFigures {
    const key = `${elevation_deg} ${cloud_oktas}`;
    const known = this.#known.get(key);
    if (known !== undefined) return known;
    const figures = this.exactlyAt({ elevation_deg, cloud_oktas });
    this.#known.set(key, figures);
    return figures;
  }

  #figures(conditions: Conditions, nuisance: Nuisance, candidates: NonEmpty<Candidate>): StateFigures {
    const { scene } = conditions;
    const middle_m = middleItem(this.depths);
    const world = underwater(conditions, nuisance);
    const judged = nonEmpty(judgeIn(sightOf(conditions, nuisance, this.depths), candidates), "candidates");
    const comparison = {
      without: judged[0],
      redIsGone: whereRedIsGone(conditions, this.depths, judged),
      mayGain: mayFilterGain(conditions),
      changeable: scene.filter_change_underwater !== "none",
    };
    const losses = new LossesOfScene(conditions, { first_m: middle_m, step_m: 0, count: 1 });
    return {
      errors: mapEach(judged, (one) => rangeError(one, comparison)),
      sensitivities: mapEach(judged, wantedBy),
      light_stops: lightFor(this.aim, world, middle_m),
      level: log2Lux(downwellingAt(world, middle_m)),
      red_loss_stops: valueAt(losses.in(world).red, 0),
    };
  }
}

/** log2 of ISO times seconds over the square of the f-number, as the camera meters it in the middle of the depths. */
function wantedBy({ merits }: Judged): number {
  const { iso, shutter_s, f_number, off_by_stops } = middleItem(merits).settings;
  return Math.log2((iso * shutter_s) / f_number ** 2) - off_by_stops;
}

function between(from: StateFigures, to: StateFigures, share: number): StateFigures {
  const mixed = (a: number, b: number): number => a + share * (b - a);
  const each = (a: readonly number[], b: readonly number[]) =>
    a.map((value, i) => mixed(value, itemAt(b, i)));
  return {
    errors: each(from.errors, to.errors),
    sensitivities: each(from.sensitivities, to.sensitivities),
    light_stops: mixed(from.light_stops, to.light_stops),
    level: mixed(from.level, to.level),
    red_loss_stops: mixed(from.red_loss_stops, to.red_loss_stops),
  };
}

/** The mean over moments. */
export function meanOf(all: readonly StateFigures[]): StateFigures {
  return all.reduce((mean, next, i) => between(mean, next, 1 / (i + 1)));
}
