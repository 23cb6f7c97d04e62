import { reasonsOf } from "../codes/coded.js";
import type { LightReasons } from "../codes/light.js";

/** A reason on the light itself, which several decisions give. */
export const lightReason = reasonsOf<LightReasons>();
