import type { Scene } from "@sunfathom/planner";
import type { PictureTexts } from "@sunfathom/words";
import type { LookAsked } from "./look.js";

/** A picture that can be asked for. */
export interface Picture<Name extends string = string> {
  /** Last part of its path. */
  name: Name;
  /** The calculation whose scenes it takes, and whose figures it shows. */
  of: "attenuation" | "filter-choice" | "exposure-loss" | "mixed-light";
  summary: string;
  description: string;
  /** What drawing it costs beside its calculation's `cost`, in the same units. */
  cost: () => number;
  /**
   * Works out what it shows.
   * @returns who draws that as SVG, as often as it is asked for
   * @throws SceneProblem where its calculation does
   */
  drawing: (scene: Scene) => (asked: LookAsked, words: PictureTexts) => string;
}
