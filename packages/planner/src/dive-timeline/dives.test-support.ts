/** Dives for the tests of timelines. */
import { daylightScene } from "@sunfathom/fixtures/scenes";
import type { Scene } from "../scene/scene.js";
import type { DiveClip, DiveSample, TimelinePlan } from "./plan.js";
import { filmedDepths } from "./profile.js";

/** Down in three minutes, along a wall that falls and rises again, and up: a sample every ten seconds. */
export function wallDive(deepest_m = 24, minutes = 48): DiveSample[] {
  const count = minutes * 6;
  return Array.from({ length: count + 1 }, (_, i): DiveSample => {
    const share = i / count;
    const down = Math.min(1, share / 0.06);
    const up = Math.min(1, (1 - share) / 0.06);
    const wall = 0.6 + 0.4 * Math.sin(Math.PI * share);
    return { time_s: i * 10, depth_m: Math.round(deepest_m * Math.min(down, up, 1) * wall * 10) / 10 };
  });
}

const CLIPS: DiveClip[] = [
  { id: "slope", from_s: 240, to_s: 300 },
  { id: "deep", from_s: 1400, to_s: 1460 },
  { from_s: 2400, to_s: 2520 },
];

export function planOf(
  scene: Partial<Scene>,
  more: Partial<Omit<TimelinePlan, "scene">> = {},
  water = "IB",
): TimelinePlan {
  const { samples = wallDive(), clips = CLIPS, events } = more;
  const depths = filmedDepths(samples, clips);
  return {
    scene: { ...daylightScene(water, 50, depths.min_depth_m, depths.max_depth_m), ...scene },
    samples,
    clips,
    ...(events === undefined ? {} : { events }),
  };
}
