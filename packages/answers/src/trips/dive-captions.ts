import type {
  ClipReasons,
  Coded,
  DiveTimelineResult,
  MomentReasons,
  TimelineClip,
  TimelineMoment,
} from "@sunfathom/planner";
import type { CueLines, Texts, TextUnits } from "@sunfathom/words";
import { say } from "../say/say.js";
import type { Clocks } from "./dive-clips.js";
import type { TripTongue } from "./ready.js";
import { type Cue, webVtt } from "./web-vtt.js";

/** How long a moment is shown, s. */
const MOMENT_S = 5;

/**
 * A dive's clips and moments as captions. Times are those of the camera's clock since midnight, and go on past the next one, so that
 * they lie beside recordings that carry the time of day.
 */
export function diveCaptions(
  { clips, moments, cautions }: DiveTimelineResult,
  { cameraStart_s }: Clocks,
  { words, trips }: TripTongue,
  units: TextUnits,
): string {
  const line = <Code extends keyof CueLines>(code: Code, parameters: CueLines[Code]): string => {
    const texts: Texts<CueLines, string> = trips.timeline_cues;
    return texts[code](parameters, units);
  };
  const clipCue = (clip: TimelineClip): Cue => ({
    ...(clip.id === undefined ? {} : { id: clip.id }),
    from_s: cameraStart_s + clip.from_s,
    to_s: cameraStart_s + clip.to_s,
    lines: [
      line("cue_depths", clip),
      line("cue_light", { ev100: clip.exposure_value_ev100 }),
      line("cue_settings", clip),
      line("cue_red", { percent: clip.red_left_percent }),
      say(clip.reason as Coded<ClipReasons>, trips.timeline_clips, units),
    ],
  });
  const momentCue = (moment: TimelineMoment): Cue => ({
    from_s: cameraStart_s + moment.time_s,
    to_s: cameraStart_s + moment.time_s + MOMENT_S,
    lines: [
      say(moment.reason as Coded<MomentReasons>, trips.timeline_moments, units),
      line("cue_settings", moment),
    ],
  });
  return webVtt({
    title: line("cue_title", {}),
    notes: cautions.map(({ code }) => words["dive-advice"].cautions[code]),
    cues: [...clips.map(clipCue), ...moments.map(momentCue)],
  });
}
