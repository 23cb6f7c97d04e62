import { filterTransmittance, type Spectrum } from "@sunfathom/optics";
import type { LampPlan } from "../codes/summary.js";
import { measuredCurve } from "../light/measured-curve.js";
import { splitWithLampFilter } from "../mixed-light/lamp-filter-split.js";
import { VISIBLE_SPLIT_DELTA_E00 } from "../mixed-light/lights.js";
import type { MixedLightAtDepth } from "../result/mixed-light.js";
import type { KitItem, Scene } from "../scene/scene.js";

/** A filter from the kit for the lamps, and the split that it leaves. */
export interface OwnedLampFilter {
  item: KitItem;
  split_left_delta_e00: number;
}

function transmittanceOf({
  filter_kind,
  filter_density,
  filter_transmittance,
}: KitItem): Spectrum | undefined {
  if (filter_transmittance) {
    return measuredCurve(filter_transmittance);
  }
  return filter_kind && filter_density !== undefined
    ? filterTransmittance(filter_kind, filter_density)
    : undefined;
}

/** The owned lamp filter that leaves the least split, where that is too little to be seen at a glance. */
export function bestOwnedLampFilter(
  scene: Scene,
  { depth_m, verdict }: MixedLightAtDepth,
): OwnedLampFilter | undefined {
  if (verdict !== "lights_fight") return undefined;
  let best: OwnedLampFilter | undefined;
  for (const item of scene.kit ?? []) {
    const filter = item.item === "lamp_filter" ? transmittanceOf(item) : undefined;
    if (!filter) continue;
    const split_left_delta_e00 = splitWithLampFilter(scene, depth_m, filter);
    const isBetter = split_left_delta_e00 < (best?.split_left_delta_e00 ?? VISIBLE_SPLIT_DELTA_E00);
    if (isBetter) best = { item, split_left_delta_e00 };
  }
  return best;
}

export function planLamps({ verdict }: MixedLightAtDepth, owned: OwnedLampFilter | undefined): LampPlan {
  if (verdict === "daylight_only") return "none";
  if (verdict === "lights_fight") return owned ? "lamps_with_filter" : "lamps_off";
  return verdict;
}

/** The scene with its lamps as planned. */
export function withLampPlan(scene: Scene, plan: LampPlan, owned: OwnedLampFilter | undefined): Scene {
  if (plan === "lamps_off") return { ...scene, lamps: [] };
  if (plan !== "lamps_with_filter" || !owned) return scene;
  const { filter_kind, filter_density, filter_transmittance } = owned.item;
  const mounted = {
    ...(filter_kind === undefined ? {} : { filter_kind }),
    ...(filter_density === undefined ? {} : { filter_density }),
    ...(filter_transmittance === undefined ? {} : { filter_transmittance }),
  };
  return { ...scene, lamps: scene.lamps.map((lamp) => ({ ...lamp, ...mounted })) };
}
