/** What cameras make of a dive's light behind each filter. Equal cameras and equal filters are worked out once. */
import { balanceSources } from "../camera/balance-setting.js";
import { type Candidate, candidatesFor, NO_FILTER } from "../filter-choice/candidates.js";
import { worthwhileFor } from "../filter-choice/decide.js";
import {
  finishOf,
  type Judged,
  judgeIn,
  mayFilterGain,
  rangeError,
  type Sight,
  sightOf,
} from "../filter-choice/merits.js";
import { whereRedIsGone } from "../filter-choice/red-is-gone.js";
import { type Conditions, conditionsOf } from "../light/conditions.js";
import { measuredCurve } from "../light/measured-curve.js";
import { requireSeenThrough } from "../light/seen-through.js";
import { lightSources } from "../light/sources.js";
import { itemAt, type NonEmpty, nonEmpty } from "../lists/non-empty.js";
import type { Camera, Scene } from "../scene/scene.js";
import { NOMINAL } from "../uncertainty/nuisance.js";
import type { Piece, TripDive } from "./plan.js";

/** Both ends and the middle of the filmed depths, or the one depth that there is. */
const depthsOfTrip = ({ min_depth_m, max_depth_m }: TripDive["scene"]): NonEmpty<number> =>
  min_depth_m === max_depth_m ? [min_depth_m] : [min_depth_m, (min_depth_m + max_depth_m) / 2, max_depth_m];

/** A dive as a camera films it, with nothing on the lens. */
export const filmedBy = ({ scene }: Pick<TripDive, "scene">, camera: Camera): Scene => ({
  ...scene,
  ...camera,
  filter_change_underwater: "none",
  lamps: [],
});

/** Equal for filters that are alike. */
const opticsOf = ({ filter_kind, filter_density, filter_transmittance }: Piece): string =>
  JSON.stringify([filter_kind, filter_density, filter_transmittance]);

/** A piece as something to choose. */
const candidateOf = (piece: Piece): Candidate => itemAt(candidatesFor({ kit: [piece] }), 1);

/** How well a guest would be off with a piece, or without any. */
export interface Served {
  judged: Judged;
  /** Depth by depth, whether nothing of red is red there. */
  redIsGone: readonly boolean[];
  /** Mean colour error over the depths, as `filter-choice` credits it. */
  delta_e00: number;
  /** The same with what a filter must gain to be worth mounting. */
  cost: number;
}

/** A dive before one camera. */
export class CameraLight {
  readonly conditions: Conditions;
  readonly depths: NonEmpty<number>;
  readonly sources: readonly string[];
  readonly #known = new Map<string, Judged>();
  #sight: Sight | undefined;
  #without: Judged | undefined;

  /** @throws SceneProblem for a sun, place, time, water or distance that the model cannot answer for */
  constructor(dive: TripDive, camera: Camera) {
    const scene = filmedBy(dive, camera);
    this.conditions = conditionsOf(scene);
    this.depths = depthsOfTrip(dive.scene);
    this.sources = [...lightSources(this.conditions), ...balanceSources(scene)];
  }

  get isDaylit(): boolean {
    return this.conditions.daylight !== undefined;
  }

  /** @throws SceneProblem for a measured filter that lets nothing through */
  requireSeen({ filter_transmittance }: Piece): void {
    if (filter_transmittance)
      requireSeenThrough(this.conditions, measuredCurve(filter_transmittance), [
        "kit",
        ["filter_transmittance"],
      ]);
  }

  /** How it is without a filter, and behind each of these. */
  among(pieces: readonly Piece[]): { bare: Served; behind: Served[] } {
    this.#sight ??= sightOf(this.conditions, NOMINAL, this.depths);
    this.#without ??= judgeIn(this.#sight, [NO_FILTER])[0];
    const without = this.#without;
    const judged = pieces.map((piece) => this.#judge(piece));
    const { scene } = this.conditions;
    const worthwhile = worthwhileFor(finishOf(scene));
    const comparison = {
      without,
      redIsGone: whereRedIsGone(
        this.conditions,
        this.depths,
        nonEmpty([without, ...new Set(judged)], "filters"),
      ),
      mayGain: mayFilterGain(this.conditions),
      changeable: false,
    };
    const served = (one: Judged, earns: number): Served => {
      const delta_e00 = rangeError(one, comparison);
      return { judged: one, redIsGone: comparison.redIsGone, delta_e00, cost: delta_e00 + earns };
    };
    return { bare: served(without, 0), behind: judged.map((one) => served(one, worthwhile)) };
  }

  #judge(piece: Piece): Judged {
    const key = opticsOf(piece);
    const known = this.#known.get(key);
    if (known !== undefined) return known;
    this.#sight ??= sightOf(this.conditions, NOMINAL, this.depths);
    const [judged] = judgeIn(this.#sight, [candidateOf(piece)]);
    this.#known.set(key, judged);
    return judged;
  }
}
