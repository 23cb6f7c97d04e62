import type { DiveTimelinesRequest } from "@sunfathom/contract";
import { type CardFrame, type DiveSample, Profile } from "@sunfathom/planner";
import type { Findings } from "../validate/findings.js";

/** Cards at their depths; what has no place, two of them, or one outside the dive is noted. */
export function framesOf(
  { card_frames }: DiveTimelinesRequest,
  samples: readonly DiveSample[],
  findings: Findings,
): CardFrame[] | undefined {
  const profile = new Profile(samples);
  const { first_s, last_s } = profile;
  return card_frames?.map((frame, i): CardFrame => {
    const { time_s, depth_m: given_m, through_filter = false, balanced = false, ...card } = frame;
    const pointer = `/card_frames/${i}`;
    if ((time_s === undefined) === (given_m === undefined)) {
      const parameters = { both: time_s !== undefined };
      findings.add(() => ({ pointer, code: "frame_one_place", parameters }));
    } else if (time_s !== undefined && (time_s < first_s || time_s > last_s)) {
      const parameters = { time_s, first_s, last_s };
      findings.add(() => ({ pointer: `${pointer}/time_s`, code: "event_within_dive", parameters }));
    }
    const depth_m = given_m ?? profile.depthAt(time_s ?? first_s);
    return { ...card, depth_m, ...(time_s === undefined ? {} : { time_s }), through_filter, balanced };
  });
}
