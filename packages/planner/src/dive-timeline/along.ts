/** The moments of a stretch of a dive at which its light is looked at: no two in a row that nobody could tell apart. */
import type { DiveSample } from "./plan.js";
import type { Profile } from "./profile.js";

/** Neither depth nor sun has moved by what shows: less than a hundredth of a stop in any water one can film in. */
const SAME_WITHIN_M = 0.05;
const SAME_WITHIN_S = 60;

/** @param breaks times at which something else changes, just before and at which it is looked, too */
export function momentsAlong(
  profile: Profile,
  { from_s, to_s }: { from_s: number; to_s: number },
  breaks: readonly number[] = [],
): DiveSample[] {
  const inside = breaks.filter((time_s) => time_s > from_s && time_s < to_s);
  const ends = inside.flatMap((time_s) => [Math.max(from_s, time_s - 0.001), time_s]);
  const all = [
    ...profile.along(from_s, to_s),
    ...ends.map((time_s) => ({ time_s, depth_m: profile.depthAt(time_s) })),
  ];
  if (ends.length > 0) all.sort((a, b) => a.time_s - b.time_s);
  const kept: DiveSample[] = [];
  all.forEach((sample, i) => {
    const last = kept.at(-1);
    const isSame =
      last !== undefined &&
      Math.abs(sample.depth_m - last.depth_m) < SAME_WITHIN_M &&
      sample.time_s - last.time_s < SAME_WITHIN_S;
    if (!isSame || i === all.length - 1 || ends.includes(sample.time_s)) kept.push(sample);
  });
  return kept;
}
