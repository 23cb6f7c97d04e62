import type { ClipReasons, MomentReasons, TimelineReasons } from "@sunfathom/planner";
import type { Texts } from "../problems/texts.js";
import type { CueLines } from "../trip-texts.js";
import { settings } from "./dial.js";
import { between, depth, depths, shown, stops, strength } from "./format.js";

const minutes = (seconds: number): string => {
  if (seconds < 90) return `${shown(seconds)} ${Math.round(seconds) === 1 ? "second" : "seconds"}`;
  return `${shown(seconds / 60)} minutes`;
};

/** Why the camera was to be set, or was set, at a moment of a dive. */
export const momentReasons: Texts<MomentReasons, string> = {
  moment_first_balance: () => "Set the white balance here, before you film.",
  moment_balance_again: (p) =>
    `Set a white balance here: the last one leaves a ${strength(p.shift_delta_e00)} colour cast that a new one takes out.`,
  moment_balance_done: (p) =>
    p.shift_delta_e00 > p.tolerance_delta_e00
      ? `This white balance was due: it took out a ${strength(p.shift_delta_e00)} colour cast.`
      : "This white balance was early: the last one still held.",
  moment_balance_behind_change: () =>
    "The filter has changed: the white balance from before is worth nothing behind it.",
  moment_filter_on: (p, u) => `The filter goes on the lens, at ${depth(p.depth_m, u)}.`,
  moment_filter_off: (p, u) => `The filter comes off the lens, at ${depth(p.depth_m, u)}.`,
  moment_exposure: (p) =>
    `Set the exposure again: it is ${stops(Math.abs(p.stops))} ${p.stops > 0 ? "brighter" : "darker"} than when you last did.`,
};

/** How the white balance of a clip stands. */
export const clipReasons: Texts<ClipReasons, string> = {
  clip_balance_held: () =>
    "The last white balance holds over the whole clip: a new one would have gained little.",
  clip_balance_close: (p) =>
    `Nobody can say whether the last white balance holds: the colour cast since then is ${strength(p.shift_delta_e00)}, give or take the uncertainties of water and camera.`,
  clip_balance_lost: (p) =>
    p.after_s < 1
      ? `The last white balance no longer holds when the clip begins: a new one would have taken out a ${strength(p.shift_delta_e00)} colour cast. Grade it on its own.`
      : `The last white balance no longer holds from ${minutes(p.after_s)} into the clip: a new one would have taken out a ${strength(p.shift_delta_e00)} colour cast. Grade that part on its own.`,
  clip_balance_not_set: () => "No white balance was set before this clip.",
};

/** What a timeline rests on. */
export const timelineReasons: Texts<TimelineReasons, string> = {
  timeline_as_planned: () =>
    "You gave no events: filter and white balance are taken as the plan for this dive has them, at the times when you passed those depths.",
  timeline_as_done: (p) =>
    p.events === 0
      ? "You said that neither filter nor white balance was touched: clips are judged by that."
      : `Clips are judged by what you did: ${shown(p.events)} ${p.events === 1 ? "event" : "events"}.`,
  timeline_filmed: (p, u) =>
    p.clips === 0
      ? `You gave no clips: the plan is for ${between(p.min_depth_m, p.max_depth_m, u)}.`
      : `The plan is for the depths of your clips, ${between(p.min_depth_m, p.max_depth_m, u)}.`,
  timeline_not_passed: (p, u) =>
    `The plan has steps at ${depths(p.depths_m, u)} that the dive did not come back to: they are left out.`,
  timeline_exposures_left_out: (p) =>
    `The light changed so often that ${shown(p.moments)} new ${p.moments === 1 ? "exposure is" : "exposures are"} left out.`,
  timeline_drawn: (p) =>
    `Light is worked out at fixed depths and times and drawn straight between them: it is right to ${shown(p.stops, 2)} stop.`,
  timeline_spread_shared: () =>
    "How sure the figures are was worked out for the middle of the dive, and is taken for all of it.",
};

/** Lines of a caption. */
export const cueLines: Texts<CueLines, string> = {
  cue_title: () => "The light of this dive, clip by clip",
  cue_depths: (p, u) => `Filmed ${between(p.min_depth_m, p.max_depth_m, u)}`,
  cue_light: (p) =>
    `EV ${shown(p.ev100.likely, 1)} at ISO 100 (${shown(p.ev100.low, 1)} to ${shown(p.ev100.high, 1)})`,
  cue_settings: (p) => `Set ${settings(p)}`,
  cue_red: (p) =>
    `Red left: ${shown(p.percent.likely)} % (${shown(p.percent.low)} to ${shown(p.percent.high)} %)`,
};
