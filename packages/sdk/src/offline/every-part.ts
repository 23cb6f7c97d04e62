/** All that can be computed without a service: a file for each, so that a bundler leaves out those that nobody asks for. */

export { attenuation } from "./parts/attenuation.js";
export { colourRecovery } from "./parts/colour-recovery.js";
export { diveAdvice } from "./parts/dive-advice.js";
export { exposureLoss } from "./parts/exposure-loss.js";
export { filterChoice } from "./parts/filter-choice.js";
export { filterKinds } from "./parts/filter-kinds.js";
export { filterMounting } from "./parts/filter-mounting.js";
export { mixedLight } from "./parts/mixed-light.js";
export { models } from "./parts/models.js";
export { waterTypes } from "./parts/water-types.js";
export { whiteBalance } from "./parts/white-balance.js";
