import type {
  ClipReasons,
  Estimate,
  KitAdviceReasons,
  LightWindowReasons,
  MarkReasons,
  MomentReasons,
  PieceFrom,
  TimelineReasons,
  TripAdviceReasons,
  TripPlanCodes,
} from "@sunfathom/planner";
import type { Texts } from "./problems/texts.js";

/** A filter of a crate, by its id, with the names of the dives that it is for. */
export interface CratePieceSaid {
  piece: string;
  from: PieceFrom;
  dives: readonly string[];
  rings: readonly string[];
}

/** What labels and calendars of a trip say beside its plans. */
export interface TripSayings {
  /** The label of a crate; empty of filters where there are no pieces. */
  trip_crate: { guest: string; pieces: readonly CratePieceSaid[] };
  /** The title of a guest's dive: the filter, or none. */
  trip_event: { dive: string; piece?: string };
  /** What a guest uses on a dive, in the crew's list. */
  trip_uses: { guest: string; piece?: string; rings: readonly string[] };
}

/** Lines of a caption on a clip, and what stands before all of them. */
export interface CueLines {
  cue_title: Record<never, never>;
  cue_depths: { min_depth_m: number; max_depth_m: number };
  cue_light: { ev100: Estimate };
  cue_settings: { iso: number; f_number: number };
  cue_red: { percent: Estimate };
}

/** What it takes to say in one language how a trip is planned, beside what the calculations say. */
export interface TripTexts {
  readonly light_windows: Texts<LightWindowReasons, string>;
  readonly kit_advice: Texts<KitAdviceReasons, string>;
  readonly trip_advice: Texts<TripAdviceReasons, string>;
  readonly trip_plan: Texts<TripPlanCodes, string>;
  readonly trip_says: Texts<TripSayings, string>;
  readonly timeline: Texts<TimelineReasons, string>;
  readonly timeline_moments: Texts<MomentReasons, string>;
  readonly timeline_clips: Texts<ClipReasons, string>;
  readonly timeline_marks: Texts<MarkReasons, string>;
  readonly timeline_cues: Texts<CueLines, string>;
}
