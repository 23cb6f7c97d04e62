import type { Lab, Xyz } from "@sunfathom/optics";
import type { Vector3 } from "../../camera/matrix.js";

/** One thing that a viewer judges: how it should look, and how it was recorded. */
export interface Seen {
  wantedXyz: Xyz;
  wantedLab: Lab;
  weight: number;
  /** Balanced raw values, clipped, 1 at the top of the recording. */
  from: Vector3;
  /** Variance of each, all that the finish starts from counted. */
  variance: Vector3;
}

/** What a finish makes of recorded red, green and blue: numbers, since it is asked very often. */
export type Finished = (red: number, green: number, blue: number) => Xyz;
