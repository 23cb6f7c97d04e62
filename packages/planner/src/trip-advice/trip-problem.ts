import { SceneProblem } from "../scene/scene-problem.js";

/** Where in a trip the model has no answer. */
export interface TripPlace {
  dive?: number;
  guest?: number;
  /** A filter, by its list and its place there. */
  piece?: { from: "shelf" | "own"; at: number };
}

/** Thrown where a part of a trip lies outside what the model can answer. */
export class TripProblem extends Error {
  override readonly name = "TripProblem";

  constructor(
    readonly problem: SceneProblem,
    readonly place: TripPlace,
  ) {
    super(problem.message);
  }
}

/** Does something of one part of a trip. @throws TripProblem in place of a SceneProblem */
export function at<T>(place: TripPlace, work: () => T): T {
  try {
    return work();
  } catch (error) {
    throw error instanceof SceneProblem ? new TripProblem(error, place) : error;
  }
}
