import type { NamedFilter } from "../codes/named-filter.js";
import { mountedIn, named } from "../filter-choice/candidates.js";
import { type Mix, mixOf } from "../mixed-light/mix.js";
import type { Scene } from "../scene/scene.js";
import { bareLamp, middleOf } from "./lamp-plan.js";

/** Filters that the caller has on the lamps: they stay, or come off. */
export interface FittedLamps {
  filter: NamedFilter;
  kept: boolean;
}

/**
 * The scene with its lamps as they are to be used, and how they mix with daylight: filters that they carry come off where lamps are
 * the only light, or would lead without them and do not with them.
 */
export function withFittedLamps(scene: Scene): {
  lamped: Scene;
  mixed: Mix;
  fitted: FittedLamps | undefined;
} {
  const mixed = mixOf(scene);
  const [on] = scene.lamps.flatMap((lamp) => mountedIn(lamp) ?? []);
  if (!on) return { lamped: scene, mixed, fitted: undefined };
  const filter = named(on);
  const { verdict } = middleOf(mixed);
  const without = { ...scene, lamps: scene.lamps.map(bareLamp) };
  const mixedWithout = mixOf(without);
  const leads = middleOf(mixedWithout).verdict === "lamps_lead";
  const kept = verdict !== "lamps_only" && (verdict === "lamps_lead" || !leads);
  return kept
    ? { lamped: scene, mixed, fitted: { filter, kept } }
    : { lamped: without, mixed: mixedWithout, fitted: { filter, kept } };
}
