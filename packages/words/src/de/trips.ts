import type { TripTexts } from "../trip-texts.js";
import { clipReasons, cueLines, momentReasons, timelineReasons } from "./dive-timelines.js";
import { kitAdviceReasons } from "./kit-advice.js";
import { lightWindowReasons } from "./light-windows.js";
import { markReasons } from "./timeline-marks.js";
import { tripAdviceReasons, tripPlan, tripSays } from "./trip-advice.js";

export const trips: TripTexts = {
  light_windows: lightWindowReasons,
  kit_advice: kitAdviceReasons,
  trip_advice: tripAdviceReasons,
  trip_plan: tripPlan,
  trip_says: tripSays,
  timeline: timelineReasons,
  timeline_moments: momentReasons,
  timeline_clips: clipReasons,
  timeline_marks: markReasons,
  timeline_cues: cueLines,
};
