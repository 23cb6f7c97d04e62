import { bottomRules } from "./bottom.js";
import { daylightRules } from "./daylight.js";
import { depthRules } from "./depth.js";
import { kitRules } from "./kit.js";
import { lampRules } from "./lamps.js";
import { lensFilterRules } from "./lens-filter.js";
import { orderRules } from "./order.js";
import type { Rule } from "./rule.js";
import { shutterRules } from "./shutter.js";
import { viewRules } from "./view.js";
import { waterRules } from "./water.js";

/** Every rule between fields of a scene. They hold on every path, after its schema. */
export const sceneRules: readonly Rule[] = [
  ...waterRules,
  ...daylightRules,
  ...depthRules,
  ...viewRules,
  ...bottomRules,
  ...orderRules,
  ...shutterRules,
  ...lensFilterRules,
  ...kitRules,
  ...lampRules,
];
