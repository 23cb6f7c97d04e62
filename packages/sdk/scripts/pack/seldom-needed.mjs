/**
 * Modules that only some scenes need, and that pages load behind what they start with. Each makes functions, or catalogues of them,
 * and nothing else, and is called where a scene asks for it and never before. One that needs much that only one calculation has
 * would be a burden to all others.
 */
export const seldomNeeded = [
  // Water known by photos of a grey card.
  "planner/src/light/card-water.ts",
  // Filters known by a grey card, or by their curve.
  "answers/src/scene/by-samples.ts",
  "contract/src/rules/filter-contradictions.ts",
  "planner/src/filter-choice/kind-of-curve.ts",
  "planner/src/light/clear-filters.ts",
  "planner/src/light/sampled-filter.ts",
  "planner/src/light/seen-through.ts",
  // A camera's own sensor.
  "contract/src/rules/sensor-problem.ts",
  "optics/src/sensor/measured-sensor.ts",
  // The sun of a place and a time.
  "planner/src/light/sun-at-place.ts",
  "optics/src/daylight/sun-position.ts",
  // A choice of filter where there is no light but video lights, no subject in sight, nothing to choose from, or part of a range to serve.
  "words/src/en/reasons/filter-seldom.ts",
  // What lies overhead.
  "planner/src/light/overhead.ts",
  // Video lights.
  "answers/src/scene/canonical-lamps.ts",
  "planner/src/light/lamps.ts",
  // What video lights do, and what is done with them.
  "planner/src/mixed-light/lit-haze.ts",
  "planner/src/dive-advice/owned-lamp-filter.ts",
  "planner/src/mixed-light/ways-out.ts",
  "planner/src/white-balance/lamp-kelvin.ts",
  "planner/src/dive-advice/steps/lamps-before.ts",
  "planner/src/dive-advice/steps/lamps-off.ts",
  "planner/src/dive-advice/steps/lamps.ts",
  "words/src/en/lamp-causes.ts",
  "words/src/en/ways-out.ts",
  // A subject that is out of reach.
  "planner/src/dive-advice/arms-length.ts",
  // Filters of a kit that a plan has no use for.
  "planner/src/dive-advice/left-ashore.ts",
  // Neutral density where it is too bright.
  "planner/src/dive-advice/neutral-plan.ts",
  // A white balance that is left to the camera, or set in kelvin.
  "words/src/en/reasons/unset-balance.ts",
  // A video light that is advised where it is too dark.
  "planner/src/exposure-loss/add-lamp.ts",
];

/**
 * Catalogues of texts that plans alone call, and only some of them: pages without plans never load them. They are packed apart, with
 * their own copy of what they share, so that nothing else is cut into more files for their sake.
 */
export const seldomInPlans = [
  // What is done with video lights.
  "words/src/en/lamp-steps.ts",
  "words/src/en/lamp-summary.ts",
  "words/src/en/lit-steps.ts",
  "words/src/en/take-beside.ts",
  // Where the light or red is at its limit.
  "words/src/en/limit-steps.ts",
  // Filters of a kit that a plan has no use for.
  "words/src/en/reasons/left-ashore.ts",
  // What light, place and camera ask for beside a plan.
  "words/src/en/reasons/circumstances.ts",
  // What is left to the camera.
  "words/src/en/auto-steps.ts",
  "words/src/en/summary-beside.ts",
  // Filters that are on the lens already or changed under water, and neutral density where it is too bright.
  "words/src/en/change-steps.ts",
];
