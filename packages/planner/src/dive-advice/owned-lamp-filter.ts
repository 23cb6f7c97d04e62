import { filterTransmittance, type Spectrum } from "@sunfathom/optics";
import { measuredCurve } from "../light/measured-curve.js";
import { splitWithLampFilter } from "../mixed-light/lamp-filter-split.js";
import type { KitItem, Scene } from "../scene/scene.js";

/** A filter from the kit for the lamps, and the split that it leaves. */
export interface OwnedLampFilter {
  item: KitItem;
  split_left_delta_e00: number;
}

export function transmittanceOf({
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

/** The owned lamp filter that leaves the least split at a depth where the lights fight. */
export function bestOwnedLampFilter(scene: Scene, depth_m: number): OwnedLampFilter | undefined {
  let best: OwnedLampFilter | undefined;
  for (const item of scene.kit ?? []) {
    const filter = item.item === "lamp_filter" ? transmittanceOf(item) : undefined;
    if (!filter) continue;
    const split_left_delta_e00 = splitWithLampFilter(scene, depth_m, filter);
    const isBetter = split_left_delta_e00 < (best?.split_left_delta_e00 ?? Infinity);
    if (isBetter) best = { item, split_left_delta_e00 };
  }
  return best;
}
