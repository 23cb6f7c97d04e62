import type { LampPlan } from "../codes/summary.js";
import { itemAt } from "../lists/non-empty.js";
import { VISIBLE_SPLIT_DELTA_E00 } from "../mixed-light/lights.js";
import type { Mix } from "../mixed-light/mix.js";
import type { MixedLightAtDepth } from "../result/mixed-light.js";
import type { Lamp, Scene } from "../scene/scene.js";
import type { OwnedLampFilter } from "./owned-lamp-filter.js";

/** What stands for the dive where lamps are judged: the middle of the range. */
export const middleOf = ({ depths }: Mix): MixedLightAtDepth => itemAt(depths, (depths.length - 1) >> 1);

/** An owned filter goes on where what it leaves is too little to be seen at a glance. */
export function planLamps(
  { verdict }: Pick<MixedLightAtDepth, "verdict">,
  owned: OwnedLampFilter | undefined,
): LampPlan {
  if (verdict === "daylight_only") return "none";
  if (verdict === "lights_fight") {
    const left = owned?.split_left_delta_e00 ?? Infinity;
    return left < VISIBLE_SPLIT_DELTA_E00 ? "lamps_with_filter" : "lamps_off";
  }
  return verdict;
}

/** A lamp with nothing on it. */
export function bareLamp({
  filter_kind: _,
  filter_density: __,
  filter_transmittance: ___,
  ...lamp
}: Lamp): Lamp {
  return lamp;
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
  return { ...scene, lamps: scene.lamps.map((lamp) => ({ ...bareLamp(lamp), ...mounted })) };
}
