import type { DiveTimelinesRequest } from "@sunfathom/contract";
import type { DiveClip, DiveSample } from "@sunfathom/planner";
import type { Findings } from "../validate/findings.js";
import { clockAt, secondsOf, withinDay } from "./clock.js";

/** Clocks are read to the millisecond. */
const exact_s = 1e-6;

/** What tells the dive's clock and the camera's from the time since the dive began. */
export interface Clocks {
  dive: (time_s: number) => string;
  camera: (time_s: number) => string;
  /** Time of day at which the dive began by the camera's clock, s: for whoever counts on past midnight. */
  cameraStart_s: number;
}

export function clocksOf({ start_clock = "00:00:00", clock_offset_s = 0 }: DiveTimelinesRequest): Clocks {
  const start_s = secondsOf(start_clock);
  return {
    dive: (time_s) => clockAt(start_s + time_s),
    camera: (time_s) => clockAt(start_s + clock_offset_s + time_s),
    cameraStart_s: withinDay(start_s + clock_offset_s),
  };
}

/** Clips in the dive's time, in order; what lies outside the dive, or over another, is noted. */
export function clipsOf(
  request: DiveTimelinesRequest,
  samples: readonly DiveSample[],
  findings: Findings,
): DiveClip[] {
  const { cameraStart_s, camera } = clocksOf(request);
  const first_s = samples[0]?.time_s ?? 0;
  const last_s = samples.at(-1)?.time_s ?? 0;
  const clips = (request.clips ?? []).map(({ id, from_clock, length_s }, index) => {
    // A dive is far shorter than a day, so that a time of day is one moment of it, or of none.
    const from_s = toMilliseconds(withinDay(secondsOf(from_clock) - cameraStart_s));
    const to_s = toMilliseconds(from_s + length_s);
    if (from_s < first_s - exact_s || to_s > last_s + exact_s) {
      const parameters = {
        from: camera(from_s),
        to: camera(to_s),
        first: camera(first_s),
        last: camera(last_s),
      };
      findings.add(() => ({ pointer: `/clips/${index}`, code: "clip_within_dive", parameters }));
    }
    return { index, clip: { ...(id === undefined ? {} : { id }), from_s, to_s } };
  });
  clips.sort((a, b) => a.clip.from_s - b.clip.from_s);
  clips.forEach(({ index, clip }, i) => {
    const before = clips[i - 1];
    if (before === undefined || before.clip.to_s <= clip.from_s + exact_s) return;
    const parameters = { other: `/clips/${before.index}` };
    findings.add(() => ({ pointer: `/clips/${index}`, code: "clips_apart", parameters }));
  });
  return clips.map(({ clip }) => clip);
}

const toMilliseconds = (time_s: number): number => Math.round(time_s * 1000) / 1000;
