import { LIGHT_REASONS_EN } from "./reasons/light-en.js";
import { reasonsWith } from "./say.js";

/** A reason on the light itself, which several decisions give. */
export const lightReason = reasonsWith(LIGHT_REASONS_EN);
