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
  "planner/src/light/seen-through.ts",
  // A camera's own sensor.
  "contract/src/rules/sensor-problem.ts",
  "optics/src/sensor/measured-sensor.ts",
  // The sun of a place and a time.
  "planner/src/light/sun-at-place.ts",
  "optics/src/daylight/sun-position.ts",
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
  "planner/src/dive-advice/steps/lamps.ts",
  "words/src/en/lamp-steps.ts",
  "words/src/en/ways-out.ts",
  // Neutral density where it is too bright.
  "planner/src/dive-advice/neutral-plan.ts",
  // A video light that is advised where it is too dark.
  "planner/src/exposure-loss/add-lamp.ts",
];
