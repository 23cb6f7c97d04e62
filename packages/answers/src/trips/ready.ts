import type { Language, Problem, TextUnits } from "@sunfathom/contract";
import type { ProblemTexts, TripTexts, Words } from "@sunfathom/words";
import type { Ready, Refused } from "../operations/outcome.js";

/** What it takes to plan a trip in one language. */
export interface TripTongue {
  language: Language;
  words: Words;
  problems: ProblemTexts;
  trips: TripTexts;
  /** Checks a scene as the calculation of that name does. */
  prepare: (calculation: "filter-choice" | "dive-advice", scene: unknown) => Ready | Refused;
  /** The texts of another language, for whom one of its own is wanted. */
  speaking: (language: Language) => Pick<TripTongue, "language" | "words" | "trips">;
}

/** A plan that keeps its schema and its rules, before anything was computed. */
export interface ReadyTrip<Size> {
  status: "ready";
  /** In its one form, as text. */
  canonical: string;
  units: TextUnits;
  /** The scene whose water decides what the computing costs. */
  scene: object;
  /** The same body once what takes long to read has been read: left out where nothing does. */
  read?: object;
  /** How much computing it is: see the service's costs. */
  size: Size;
  /** @returns the answer in its form, or why there is none */
  compute: () => TripAnswered | { status: "problem"; problem: Problem };
  /** The same as captions (WebVTT), for what has them. */
  captions?: () => { status: "ok"; text: string } | { status: "problem"; problem: Problem };
}

export interface TripAnswered {
  status: "ok";
  body: object;
  /** The same as what happens when, where it can be. */
  calendar?: TripCalendar;
}

/** Events of a calendar, in words. */
export interface TripCalendar {
  /** What the calendar, and all that is in it, is known by. */
  id: string;
  /** Whose it is, where it is not everyone's. */
  guest_id?: string;
  language: Language;
  events: readonly {
    /** Known by it among the events of its calendar. */
    id: string;
    title: string;
    text: string;
    place: string;
    local_time: string;
    time_zone: string;
    duration_min: number;
    position?: { latitude_deg: number; longitude_deg: number };
  }[];
}

/** What tells how long windows of light take. */
export interface WindowsSize {
  /** Suns and skies under which the model is asked. */
  states: number;
  /** Suns under which every filter is tried. */
  searches: number;
  /** Moments at which the sun is asked where it stands. */
  moments: number;
}

/** What tells how long it takes to hand out a shelf. */
export interface TripSize {
  /** Each dive before each camera that differs: the scene, and how many filters are judged at how many depths. */
  lights: { scene: object; judged: number }[];
  /** Pieces of the shelf that guests may be given, over all dives. */
  choices: number;
  /** Plans of guests on dives. */
  plans: number;
  /** Years of time zones whose clocks a calendar tells of. */
  clockYears: number;
  /** Pieces that are tried on cameras. */
  fits: number;
}

/** What tells how long a dive as it was dived takes. */
export interface TimelineSize {
  /** Depths and times at which the model is asked. */
  nodes: number;
  /** Clips and events. */
  judged: number;
  samples: number;
}
