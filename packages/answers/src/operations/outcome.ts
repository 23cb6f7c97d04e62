import type { Problem } from "@sunfathom/contract";

export interface Refused {
  status: "problem";
  problem: Problem;
}

export interface Answered {
  status: "ok";
  /** The answer in its final form: `toJson` gives its bytes. */
  body: object;
  /** The scene in its one form, as text: equal for scenes that mean the same. */
  canonical: string;
}

/** A scene that is valid, before anything was computed. */
export interface Ready {
  status: "ready";
  canonical: string;
  compute: () => Answered | Refused;
}
