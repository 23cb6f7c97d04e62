import type { Underwater } from "../light/underwater.js";
import type { MixedLightZone } from "../result/mixed-light.js";
import { verdictAt } from "./lights.js";

/** Zones are found to this step, or to a sixtieth of a longer range. */
const STEP_M = 0.25;
const MOST_STEPS = 60;

/** The range as stretches of one verdict, shallow first. */
export function zonesOf(world: Underwater): MixedLightZone[] {
  const { min_depth_m, max_depth_m } = world.scene;
  const steps = Math.min(MOST_STEPS, Math.ceil((max_depth_m - min_depth_m) / STEP_M));
  const depths = Array.from({ length: steps + 1 }, (_, i) =>
    steps === 0 ? min_depth_m : min_depth_m + ((max_depth_m - min_depth_m) * i) / steps,
  );
  const zones: MixedLightZone[] = [];
  for (const depth_m of depths) {
    const verdict = verdictAt(world, depth_m);
    const last = zones[zones.length - 1];
    if (last && last.verdict === verdict) last.max_depth_m = depth_m;
    else zones.push({ verdict, min_depth_m: depth_m, max_depth_m: depth_m });
  }
  return zones;
}
