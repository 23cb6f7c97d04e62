import type { SceneRuleParameters } from "./all.js";
import { cameraCases } from "./cases/camera.test-support.js";
import { filtersCases } from "./cases/filters.test-support.js";
import { lampsCases } from "./cases/lamps.test-support.js";
import { placeCases } from "./cases/place.test-support.js";
import type { Cases } from "./cases/rule-cases.test-support.js";
import { waterCases } from "./cases/water.test-support.js";

/** The cases of every rule. */
export const sceneCases: Readonly<Record<keyof SceneRuleParameters, Cases>> = {
  ...waterCases,
  ...placeCases,
  ...filtersCases,
  ...lampsCases,
  ...cameraCases,
};
