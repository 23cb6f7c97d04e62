import type { NamedFilter } from "../codes/named-filter.js";
import type { LampPlan } from "../codes/summary.js";
import { colourRedDepths, type RedDepthsNominal } from "../colour-recovery/red-depths.js";
import { named } from "../filter-choice/candidates.js";
import { filterChoice } from "../filter-choice/filter-choice.js";
import { itemAt, type NonEmpty } from "../lists/non-empty.js";
import { mixedLight } from "../mixed-light/mixed-light.js";
import type { FilterChoiceAnswer } from "../result/filter-choice.js";
import type { MixedLightAnswer, MixedLightAtDepth } from "../result/mixed-light.js";
import type { Scene } from "../scene/scene.js";
import { bestOwnedLampFilter, type OwnedLampFilter, planLamps, withLampPlan } from "./lamp-plan.js";
import { type Leg, legsOf } from "./legs.js";

/** Every decision for one dive, each taken on what was decided before it. */
export interface Decisions {
  /** As given. */
  scene: Scene;
  /** As it will be filmed: lamps as planned, the advised filter on the lens. */
  filmed: Scene;
  mixed: MixedLightAnswer;
  /** The depth that stands for the dive where lamps are judged: the middle of the range. */
  middle: MixedLightAtDepth;
  lampPlan: LampPlan;
  lampFilter: OwnedLampFilter | undefined;
  /** Illuminance of the lamps on the subject as planned, lx. */
  lampLight_lx: number;
  filter: FilterChoiceAnswer;
  filterNamed: NamedFilter;
  runnerUpNamed: NamedFilter;
  /** Shallow first. */
  legs: NonEmpty<Leg>;
  /** Absent without daylight, and where lamps bring red of their own. */
  red: RedDepthsNominal | undefined;
}

const middleOf = ({ depths }: MixedLightAnswer): MixedLightAtDepth =>
  itemAt(depths, (depths.length - 1) >> 1);

export function decisionsFor(scene: Scene): Decisions {
  const mixed = mixedLight(scene);
  const middle = middleOf(mixed);
  const lampFilter = bestOwnedLampFilter(scene, middle);
  const lampPlan = planLamps(middle, lampFilter);
  const lit = withLampPlan(scene, lampPlan, lampFilter);
  const filter = filterChoice(lit);
  const filmed = withFilter(lit, filter);
  const planned = lampPlan === "lamps_with_filter" ? middleOf(mixedLight(lit)) : middle;
  return {
    scene,
    filmed,
    mixed,
    middle,
    lampPlan,
    lampFilter,
    lampLight_lx: planned.lamp_illuminance_lx.likely,
    filter,
    filterNamed: namedIn(filter),
    runnerUpNamed: namedIn(filter.runner_up),
    legs: legsOf(withoutFilter(lit), filmed, filter),
    red: filmed.lamps.length > 0 ? undefined : colourRedDepths(filmed),
  };
}

function namedIn({
  filter_kind: kind,
  filter_density: density,
  filter_id: id,
}: Pick<FilterChoiceAnswer, "filter_kind" | "filter_density" | "filter_id">): NamedFilter {
  return named({
    kind,
    ...(density === undefined ? {} : { density }),
    ...(id === undefined ? {} : { id }),
  });
}

/** The scene with nothing on the lens, whatever was given. */
function withoutFilter(scene: Scene): Scene {
  const { filter_kind: _, filter_density: __, filter_transmittance: ___, ...bare } = scene;
  return bare;
}

/** The scene with the advised filter on the lens, in place of whatever was given. */
function withFilter(scene: Scene, { filter_kind, filter_density, filter_id }: FilterChoiceAnswer): Scene {
  const bare = withoutFilter(scene);
  if (filter_kind === "none") return bare;
  const owned = scene.kit?.find(({ id }) => id === filter_id);
  if (owned?.filter_transmittance) return { ...bare, filter_transmittance: owned.filter_transmittance };
  return filter_density === undefined ? bare : { ...bare, filter_kind, filter_density };
}
