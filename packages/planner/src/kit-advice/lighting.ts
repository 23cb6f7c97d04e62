/** A dive as it may be lit: by daylight alone, or with one of the lights, as `mixed-light` and the plan for a dive decide on it. */
import { frameErrorAt } from "../dive-advice/frame-error.js";
import { bareLamp } from "../dive-advice/lamp-plan.js";
import { transmittanceOf } from "../dive-advice/owned-lamp-filter.js";
import { type Candidate, candidatesFor, NO_FILTER } from "../filter-choice/candidates.js";
import { requireSeenThroughKit } from "../filter-choice/choose.js";
import {
  type Comparison,
  type Judged,
  judgeIn,
  mayFilterGain,
  rangeError,
  sightOf,
} from "../filter-choice/merits.js";
import { whereRedIsGone } from "../filter-choice/red-is-gone.js";
import { type Conditions, conditionsOf } from "../light/conditions.js";
import { depthsOf } from "../light/depths.js";
import { underwater } from "../light/underwater.js";
import { requireWithinSight } from "../light/within-sight.js";
import { itemAt, lastOf, mapEach, middleItem, type NonEmpty, nonEmpty } from "../lists/non-empty.js";
import { splitIn } from "../mixed-light/lamp-filter-split.js";
import { VISIBLE_SPLIT_DELTA_E00, verdictAt } from "../mixed-light/lights.js";
import type { Lamp, Scene } from "../scene/scene.js";
import { NOMINAL, type Nuisance } from "../uncertainty/nuisance.js";
import { NO_PIECE, onlyPiece, type PieceSet } from "./piece-set.js";
import { type KitPiece, kitItemOf } from "./plan.js";

/** What a light does on a dive. */
export type LightUse =
  | "none"
  | "lamps_only"
  | "lamps_lead"
  | "daylight_leads"
  | "lamps_with_daylight"
  | "lamps_with_filter";

export interface Lighting {
  use: LightUse;
  /** The light, and the filter on it. */
  requires: PieceSet;
  light?: number;
  lampFilter?: number;
  conditions: Conditions;
  depths: NonEmpty<number>;
  /** No filter, and then each filter of the kit. */
  judged: NonEmpty<Judged>;
  redIsGone: readonly boolean[];
  mayGain: boolean;
  /**
   * Where no light leads, what the whole picture shows beyond what the subject does by daylight: it is looked at in the middle of the
   * depths, as the plan for a dive looks at it, and taken for the range. By candidate.
   */
  beyond?: readonly number[];
}

type Use = Pick<Lighting, "use" | "requires" | "light" | "lampFilter">;

/** The same dive with other lights: neither daylight nor the water changes with them. */
function relit({ scene, ...conditions }: Conditions, lamps: Lamp[]): Conditions {
  const lit = { ...scene, lamps };
  requireWithinSight(lit, conditions.daylight, conditions.water);
  return { ...conditions, scene: lit };
}

function litBy(conditions: Conditions, of: Use): Lighting {
  requireSeenThroughKit(conditions);
  const { scene } = conditions;
  const depths = depthsOf(scene);
  const judged = nonEmpty(judgeIn(sightOf(conditions, NOMINAL, depths), candidatesFor(scene)), "candidates");
  const redIsGone = whereRedIsGone(conditions, depths, judged);
  return { ...of, conditions, depths, judged, redIsGone, mayGain: mayFilterGain(conditions) };
}

/** The same picture with a light that fights daylight, and with what stands in for it on the lamp. */
function fighting(day: Lighting, conditions: Conditions, of: Use): Lighting {
  requireSeenThroughKit(conditions);
  const depth_m = middleItem(day.depths);
  const beyond = day.judged.map(
    ({ candidate }) =>
      frameErrorAt(conditions, NOMINAL, depth_m, candidate) -
      frameErrorAt(day.conditions, NOMINAL, depth_m, candidate),
  );
  return { ...day, ...of, conditions, beyond };
}

/** Every way to use one light, a piece of the kit. */
function withLight(
  bare: Conditions,
  day: Lighting | undefined,
  pieces: readonly KitPiece[],
  light: number,
): Lighting[] {
  const piece = itemAt(pieces, light);
  if (piece.item !== "lamp") return [];
  const { lamp } = piece;
  const lit = relit(bare, [lamp]);
  const requires = onlyPiece(light);
  const depth_m = middleItem(depthsOf(bare.scene));
  const verdict = verdictAt(underwater(lit, NOMINAL), depth_m);
  if (verdict === "daylight_only") return [];
  if (verdict !== "lights_fight" || day === undefined) {
    const use = verdict === "lights_fight" ? "lamps_only" : verdict;
    return [litBy(lit, { use, requires, light })];
  }
  return [
    fighting(day, lit, { use: "lamps_with_daylight", requires, light }),
    ...pieces.flatMap((filter, lampFilter) => {
      const item = filter.item === "lamp_filter" ? kitItemOf(bare.scene, filter.id) : undefined;
      const curve = item && transmittanceOf(item);
      // What leaves a split that is seen matches nothing.
      if (!item || !curve || splitIn(lit, depth_m, curve) >= VISIBLE_SPLIT_DELTA_E00) return [];
      const { id: _, item: __, ...onLamp } = item;
      const both = requires | onlyPiece(lampFilter);
      const filtered = relit(bare, [{ ...bareLamp(lamp), ...onLamp }]);
      return [fighting(day, filtered, { use: "lamps_with_filter", requires: both, light, lampFilter })];
    }),
  ];
}

/**
 * A dive in every light that the pieces allow. Lights are used one piece at a time.
 * @throws SceneProblem for what the model cannot answer for
 */
export function lightingsOf(scene: Scene, pieces: readonly KitPiece[]): Lighting[] {
  const bare = conditionsOf(scene);
  const day = bare.daylight && litBy(bare, { use: "none", requires: NO_PIECE });
  return [...(day ? [day] : []), ...pieces.flatMap((_, place) => withLight(bare, day, pieces, place))];
}

const comparisonOf = ({ judged, redIsGone, mayGain }: Lighting, changeable: boolean): Comparison => ({
  without: judged[0],
  redIsGone,
  mayGain,
  changeable,
});

/** Colour error over the range of a dive's depths, behind one of the candidates. */
export function errorIn(lighting: Lighting, candidate: number, changeable: boolean): number {
  const { judged, beyond } = lighting;
  const error = rangeError(itemAt(judged, candidate), comparisonOf(lighting, changeable));
  return beyond === undefined ? error : Math.max(0, error + itemAt(beyond, candidate));
}

const few = <T>(items: Readonly<NonEmpty<T>>): NonEmpty<T> =>
  items.length < 3 ? [items[0]] : [items[0], middleItem(items), lastOf(items)];

/** The same in another state of the world, at both ends and in the middle: what it shifts there is taken for the range. */
export function errorInState(
  lighting: Lighting,
  candidate: Candidate,
  changeable: boolean,
  nuisance: Nuisance,
): number {
  const { use, conditions, depths } = lighting;
  if (use === "lamps_with_daylight" || use === "lamps_with_filter")
    return frameErrorAt(conditions, nuisance, middleItem(depths), candidate);
  const sight = sightOf(conditions, nuisance, few(depths));
  const [without, behind] = judgeIn(sight, [NO_FILTER, candidate]);
  const redIsGone = few(nonEmpty(lighting.redIsGone, "depths"));
  return rangeError(behind, { ...comparisonOf(lighting, changeable), without, redIsGone });
}

/** The smallest aperture at which a dive is filmed behind a candidate: corners are cut off there first. */
export const smallestAperture = ({ judged, conditions }: Lighting, candidate: number): number =>
  Math.max(
    conditions.scene.f_number ?? 0,
    ...mapEach(itemAt(judged, candidate).merits, ({ settings }) => settings.f_number),
  );
