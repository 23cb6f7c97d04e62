/** How often intervals hold what is right, over dives whose truth is known. Tests only. */
import type { Scene } from "../../scene/scene.js";
import { SceneProblem } from "../../scene/scene-problem.js";
import type { CardFrame } from "../plan.js";
import { marksOf } from "./marks.js";
import { truthOf } from "./truths.test-support.js";

export interface Coverage {
  count: number;
  predicted: number;
  measured: number;
}

/** A card that the camera could make neutral stays from it by 0, which no interval that ends there can hold in four cases of five. */
const LEAST_SHORT_STOPS = 0.15;

/**
 * Shares of predictions and measurements that hold the truth, by what is marked.
 * @param seeds of dives
 */
export function coverageOver(seeds: readonly number[]): Record<string, Coverage> {
  const all: Record<string, Coverage> = {};
  const refused: SceneProblem[] = [];
  for (const seed of seeds) {
    const { scene, frames, values } = truthOf(seed);
    const met: Record<string, number> = {};
    for (const { marks, predicted, measured } of marksUnlessRefused(scene, frames, refused)) {
      const place = met[marks] ?? 0;
      met[marks] = place + 1;
      const truth = values[marks]?.[place];
      if (truth === undefined) throw new RangeError(`nothing is right for ${marks}`);
      if (marks === "balance_reach" && truth < LEAST_SHORT_STOPS) continue;
      const coverage = all[marks] ?? { count: 0, predicted: 0, measured: 0 };
      all[marks] = coverage;
      coverage.count += 1;
      if (truth >= predicted.low && truth <= predicted.high) coverage.predicted += 1;
      if (truth >= measured.low && truth <= measured.high) coverage.measured += 1;
    }
  }
  // What no water fits is refused, not marked: that has to be rare.
  if (refused.length > seeds.length / 100)
    throw new Error(`${refused.length} of ${seeds.length} were refused.`);
  for (const coverage of Object.values(all)) {
    coverage.predicted /= coverage.count;
    coverage.measured /= coverage.count;
  }
  return all;
}

function marksUnlessRefused(scene: Scene, frames: readonly CardFrame[], refused: SceneProblem[]) {
  try {
    return marksOf(scene, frames);
  } catch (error) {
    if (!(error instanceof SceneProblem)) throw error;
    refused.push(error);
    return [];
  }
}
