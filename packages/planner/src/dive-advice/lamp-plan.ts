import type { LampPlan } from "../codes/summary.js";
import { itemAt } from "../lists/non-empty.js";
import type { Mix } from "../mixed-light/mix.js";
import type { MixedLightAtDepth } from "../result/mixed-light.js";
import type { Lamp, Scene } from "../scene/scene.js";
import type { OwnedLampFilter } from "./owned-lamp-filter.js";

/** What stands for the dive where lamps are judged: the middle of the range. */
export const middleOf = ({ depths }: Mix): MixedLightAtDepth => itemAt(depths, (depths.length - 1) >> 1);

/** @param inFight what is done where no light leads */
export function planLamps(
  { verdict }: Pick<MixedLightAtDepth, "verdict">,
  inFight: () => LampPlan,
): LampPlan {
  if (verdict === "daylight_only") return "none";
  return verdict === "lights_fight" ? inFight() : verdict;
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
