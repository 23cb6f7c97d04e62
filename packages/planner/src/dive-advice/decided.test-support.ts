/** What was decided for the dives of the tests, each worked out once, and a way to read a step of a plan. */

import { daylightScene } from "@sunfathom/fixtures/scenes";
import type { DiveStep } from "../result/dive-advice.js";
import type { KitItem, Scene } from "../scene/scene.js";
import { type Decisions, decisionsFor } from "./decisions.js";

const known = new Map<Scene, Decisions>();

export function decided(scene: Scene): Decisions {
  const decisions = known.get(scene) ?? decisionsFor(scene);
  known.set(scene, decisions);
  return decisions;
}

/** Blue water from 1 m down, where the mount lets the filter come in on the way. */
export const FLIPPED: Scene = { ...daylightScene("IB", 55, 1, 15), filter_change_underwater: "flip" };

/** A neutral filter of a kit. */
export const grey = (id: string, filter_density: number): KitItem => ({
  id,
  item: "lens_filter",
  filter_kind: "neutral",
  filter_density,
});

/** Phase, code and depth of each step, in their order. */
export const toldBy = (steps: readonly DiveStep[]) =>
  steps.map(({ phase, code, depth_m }) => [phase, code, depth_m]);

export const parametersIn = (
  steps: readonly DiveStep[],
  code: string,
): Readonly<Record<string, unknown>> => ({
  ...steps.find((step) => step.code === code)?.parameters,
});
