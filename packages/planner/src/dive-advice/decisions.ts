import type { NamedFilter } from "../codes/named-filter.js";
import type { LampPlan } from "../codes/summary.js";
import { colourRedDepths, type RedDepthsNominal } from "../colour-recovery/red-depths.js";
import { bareLens, candidatesFor, named, onShelf } from "../filter-choice/candidates.js";
import { fitOf } from "../light/lens-filter.js";
import type { NonEmpty } from "../lists/non-empty.js";
import { type Mix, mixOf } from "../mixed-light/mix.js";
import { once } from "../once.js";
import type { FilterChoiceFigures } from "../result/filter-choice.js";
import type { MixedLightAtDepth } from "../result/mixed-light.js";
import type { Scene } from "../scene/scene.js";
import { type CloseCall, closeFilterCall } from "./close-calls.js";
import { closeLampCall } from "./close-lamp-call.js";
import { exposurePlanFor } from "./exposure-plan.js";
import { type FittedLamps, withFittedLamps } from "./fitted-lamps.js";
import { type LampWays, lampWaysAt } from "./lamp-choice.js";
import { middleOf, planLamps, withLampPlan } from "./lamp-plan.js";
import { type Leg, legsOf } from "./legs.js";
import { type Chosen, chosenOver, type Mounted, withoutFilter } from "./mounted.js";
import { type OnSubject, onSubjectWith } from "./on-subject.js";
import { bestOwnedLampFilter, type OwnedLampFilter } from "./owned-lamp-filter.js";
import type { ExposurePlan } from "./station.js";

/** Every decision for one dive, each taken on what was decided before it. */
export interface Decisions {
  /** As given. */
  scene: Scene;
  /** As it will be filmed: lamps as planned, the advised filter on the lens. */
  filmed: Scene;
  mixed: Mix;
  /** The depth that stands for the dive where lamps are judged: the middle of the range. */
  middle: MixedLightAtDepth;
  lampPlan: LampPlan;
  /** What could be done with the lamps; absent where a light leads. */
  lampWays: LampWays | undefined;
  lampFilter: OwnedLampFilter | undefined;
  /** What the lamps carry already. */
  fitted: FittedLamps | undefined;
  /** Illuminance of the lamps on the subject as planned, lx. */
  lampLight_lx: number;
  filter: Chosen;
  filterNamed: NamedFilter;
  /** What the lens carries already. */
  mounted: Mounted | undefined;
  /** Shallow first. */
  legs: NonEmpty<Leg>;
  exposure: ExposurePlan;
  /** What lamps that stay off would make of the subject alone. */
  onSubject: OnSubject | undefined;
  closeCalls: CloseCall[];
  /** Absent without daylight, and where lamps bring red of their own. */
  red: RedDepthsNominal | undefined;
}

/** @param mountable how many filters the lens can carry, one behind the other */
export function decisionsFor(scene: Scene, mountable = Infinity): Decisions {
  const { lamped, mixed, fitted } = withFittedLamps(scene);
  const middle = middleOf(mixed);
  const doFight = middle.verdict === "lights_fight";
  const lampFilter = doFight ? bestOwnedLampFilter(lamped, middle.depth_m) : undefined;
  const candidates = mountable > 0 ? candidatesFor : bareLens;
  const lampWays = once(() => lampWaysAt(lamped, candidates, middle.depth_m, lampFilter));
  const lampPlan = planLamps(middle, () => lampWays().ways[0].plan);
  const lit = withLampPlan(lamped, lampPlan, lampFilter);
  const { filter, mounted } = chosenOver(lit, candidates);
  const filmed = withFilter(lit, filter, mounted);
  const planned = lampPlan === "lamps_with_filter" ? middleOf(mixOf(lit)) : middle;
  const legs = legsOf(withoutFilter(lit), filmed, filter);
  const hasBothLights = lampPlan !== "none" && lampPlan !== "lamps_only";
  const lampCall = hasBothLights
    ? closeLampCall({ scene: lamped, candidates, ways: () => lampWays().ways }, middle, lampPlan, lampFilter)
    : [];
  return {
    scene,
    filmed,
    mixed,
    middle,
    lampPlan,
    lampWays: doFight ? lampWays() : undefined,
    lampFilter,
    fitted,
    lampLight_lx: planned.lamp_illuminance_lx.likely,
    filter,
    filterNamed: mounted?.kept ? mounted.filter : namedIn(filter),
    mounted,
    legs,
    exposure: exposurePlanFor(scene, legs, mountable - (filter.filter_kind === "none" ? 0 : 1)),
    onSubject:
      lampPlan === "lamps_off" && lampCall.length === 0 ? onSubjectWith(lamped, middle.depth_m) : undefined,
    closeCalls: [...closeFilterCall(filter, namedIn(filter.runner_up)), ...lampCall],
    red: filmed.lamps.length > 0 ? undefined : colourRedDepths(filmed),
  };
}

type Told = Pick<FilterChoiceFigures, "filter_kind" | "filter_density" | "filter_id"> &
  Partial<Pick<FilterChoiceFigures, "as_good_from_density" | "as_good_to_density">>;

function namedIn({
  filter_kind: kind,
  filter_density: density,
  filter_id: id,
  as_good_from_density: from,
  as_good_to_density: to,
}: Told): NamedFilter {
  const filter = named({
    kind,
    ...(density === undefined ? {} : { density }),
    ...(id === undefined ? {} : { id }),
  });
  return filter.shelf && density !== undefined ? { ...filter, shelf: onShelf(density, from, to) } : filter;
}

/** The scene with the advised filter on the lens, in place of whatever was given. */
function withFilter(
  scene: Scene,
  { filter_kind, filter_density, filter_id }: FilterChoiceFigures,
  mounted: Mounted | undefined,
): Scene {
  if (mounted?.kept) return scene;
  const bare = withoutFilter(scene);
  if (filter_kind === "none") return bare;
  const fit = filter_id === undefined ? undefined : fitOf(scene, filter_id);
  if (fit && filter_density !== undefined) {
    const { id: _, ...asMounted } = fit;
    return { ...bare, filter_kind, filter_density, filter_fits: [...(bare.filter_fits ?? []), asMounted] };
  }
  const owned = scene.kit?.find(({ id }) => id === filter_id);
  if (owned?.filter_transmittance) return { ...bare, filter_transmittance: owned.filter_transmittance };
  return filter_density === undefined ? bare : { ...bare, filter_kind, filter_density };
}
