import { bottomRules } from "./bottom.js";
import { daylightRules } from "./daylight.js";
import { depthRules } from "./depth.js";
import { kitRules } from "./kit.js";
import { lampRules } from "./lamps.js";
import { lensFilterRules } from "./lens-filter.js";
import type { mountingKinds } from "./mounting-in-scene.js";
import { orderRules } from "./order.js";
import { overheadRules } from "./overhead.js";
import { recordingCurveRules } from "./recording-curve.js";
import type { ParametersOf } from "./rule.js";
import { sensorRules } from "./sensor.js";
import { shutterRules } from "./shutter.js";
import { viewRules } from "./view.js";
import { waterRules } from "./water.js";
import { whiteBalanceRules } from "./white-balance.js";

/** The rules between fields of a scene, but for what a filter is mounted on. */
export const sceneRules = [
  ...waterRules,
  ...daylightRules,
  ...depthRules,
  ...viewRules,
  ...bottomRules,
  ...orderRules,
  ...shutterRules,
  ...recordingCurveRules,
  ...sensorRules,
  ...whiteBalanceRules,
  ...lensFilterRules,
  ...kitRules,
  ...lampRules,
  ...overheadRules,
] as const;

/** What a violation of each comes with, by its code. */
export type SceneRuleParameters = ParametersOf<readonly [...typeof sceneRules, typeof mountingKinds]>;
