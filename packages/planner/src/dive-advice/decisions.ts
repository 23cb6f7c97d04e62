import { colourRedDepths, type RedDepthsNominal } from "../colour-recovery/red-depths.js";
import { exposureLoss } from "../exposure-loss/exposure-loss.js";
import { filterChoice } from "../filter-choice/filter-choice.js";
import { mixedLight } from "../mixed-light/mixed-light.js";
import type { LampPlan } from "../result/dive-advice.js";
import type { ExposureLossAnswer } from "../result/exposure-loss.js";
import type { FilterChoiceAnswer } from "../result/filter-choice.js";
import type { MixedLightAnswer, MixedLightAtDepth, WayOut } from "../result/mixed-light.js";
import type { WhiteBalanceAnswer } from "../result/white-balance.js";
import type { Scene } from "../scene/scene.js";
import { whiteBalance } from "../white-balance/white-balance.js";

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
  lampFilter: WayOut | undefined;
  filter: FilterChoiceAnswer;
  balance: WhiteBalanceAnswer;
  exposure: ExposureLossAnswer;
  /** Exposure without a filter, where it is carried and swung in on the way down. */
  exposureBefore: ExposureLossAnswer | undefined;
  /** Depths at which the filter comes in and goes out again, going down; undefined where the mount does not change. */
  filterIn_m: number | undefined;
  filterOut_m: number | undefined;
  /** Absent without daylight, and where lamps bring red of their own. */
  red: RedDepthsNominal | undefined;
}

export function decisionsFor(scene: Scene): Decisions {
  const mixed = mixedLight(scene);
  const middle = mixed.depths[(mixed.depths.length - 1) >> 1];
  const lampFilter = ownedLampFilter(scene, middle);
  const lampPlan = planLamps(middle, lampFilter);
  const lit = withLampPlan(scene, lampPlan, lampFilter);
  const filter = filterChoice(lit);
  const filmed = withFilter(lit, filter);
  const { filterIn_m, filterOut_m } = changesOf(scene, filter);
  return {
    scene,
    filmed,
    mixed,
    middle,
    lampPlan,
    lampFilter,
    filter,
    balance: whiteBalance(filterIn_m === undefined ? filmed : { ...filmed, min_depth_m: filterIn_m }),
    exposure: exposureLoss(filmed),
    exposureBefore: filterIn_m === undefined ? undefined : exposureLoss(lit),
    filterIn_m,
    filterOut_m,
    red: filmed.lamps.length > 0 ? undefined : colourRedDepths(filmed),
  };
}

function changesOf(scene: Scene, filter: FilterChoiceAnswer): Pick<Decisions, "filterIn_m" | "filterOut_m"> {
  const { serves_min_depth_m: from_m, serves_max_depth_m: to_m, change_depths_m } = filter;
  if (!change_depths_m || from_m === undefined || to_m === undefined) {
    return { filterIn_m: undefined, filterOut_m: undefined };
  }
  return {
    filterIn_m: from_m > scene.min_depth_m ? from_m : undefined,
    filterOut_m: to_m < scene.max_depth_m ? to_m : undefined,
  };
}

/** A way out by lamp filter counts where such a filter is owned; without a kit nothing is taken to be owned. */
function ownedLampFilter({ kit }: Scene, { ways_out }: MixedLightAtDepth): WayOut | undefined {
  const way = ways_out.find((w) => w.way === "lamp_filter");
  const owned = kit?.some(
    (item) => item.item === "lamp_filter" && item.filter_kind === way?.lamp_filter_kind,
  );
  return owned ? way : undefined;
}

function planLamps({ verdict }: MixedLightAtDepth, lampFilter: WayOut | undefined): LampPlan {
  if (verdict === "daylight_only") return "none";
  if (verdict === "lights_fight") return lampFilter ? "lamps_with_filter" : "lamps_off";
  return verdict;
}

function withLampPlan(scene: Scene, plan: LampPlan, lampFilter: WayOut | undefined): Scene {
  if (plan === "lamps_off") return { ...scene, lamps: [] };
  if (plan !== "lamps_with_filter" || !lampFilter?.lamp_filter_kind) return scene;
  const { lamp_filter_kind: filter_kind, lamp_filter_density: filter_density } = lampFilter;
  if (filter_density === undefined) return scene;
  return { ...scene, lamps: scene.lamps.map((lamp) => ({ ...lamp, filter_kind, filter_density })) };
}

/** The scene with the advised filter on the lens, in place of whatever was given. */
function withFilter(scene: Scene, { filter_kind, filter_density, filter_id }: FilterChoiceAnswer): Scene {
  const { filter_kind: _, filter_density: __, filter_transmittance: ___, ...bare } = scene;
  if (filter_kind === "none") return bare;
  const owned = scene.kit?.find(({ id }) => id === filter_id);
  if (owned?.filter_transmittance) return { ...bare, filter_transmittance: owned.filter_transmittance };
  return filter_density === undefined ? bare : { ...bare, filter_kind, filter_density };
}
