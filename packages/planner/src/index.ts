export { clockIn } from "@sunfathom/optics";
export { linearAt } from "./camera/code-curve.js";
export type { Transfer } from "./camera/transfer.js";
export { type Advice, CAUTIONS_OF } from "./cautions/advises.js";
export { cautionsIn } from "./cautions/cautions-for.js";
export { checkpoint, onCheckpoint } from "./checkpoint.js";
export type * from "./codes/attenuation.js";
export type * from "./codes/balance-procedure.js";
export type * from "./codes/card-notes.js";
export type * from "./codes/causes.js";
export type * from "./codes/cautions.js";
export type * from "./codes/circumstances.js";
export type { Basis, Coded, Nothing, Reason } from "./codes/coded.js";
export type * from "./codes/colour-recovery.js";
export type * from "./codes/dive-timelines.js";
export type * from "./codes/exposure-loss.js";
export type * from "./codes/filter-choice.js";
export type * from "./codes/filter-mounting.js";
export type * from "./codes/kit-advice.js";
export type * from "./codes/left-ashore.js";
export type * from "./codes/light.js";
export type * from "./codes/light-windows.js";
export type * from "./codes/mixed-light.js";
export type * from "./codes/mount-in-plan.js";
export type * from "./codes/mounting-steps.js";
export type * from "./codes/named-filter.js";
export type * from "./codes/steps.js";
export type * from "./codes/summary.js";
export type * from "./codes/take.js";
export type * from "./codes/trip-advice.js";
export type * from "./codes/ways-out.js";
export type * from "./codes/ways-to-pay.js";
export type * from "./codes/white-balance.js";
export { mountedAdvice } from "./dive-advice/mounted-advice.js";
export { diveTimeline } from "./dive-timeline/dive-timeline.js";
export { nodesFor } from "./dive-timeline/light-grid.js";
export {
  type CardFrame,
  type DiveClip,
  type DiveSample,
  type DoneEvent,
  LENS_EVENTS,
  type LensEvent,
  type TimelinePlan,
} from "./dive-timeline/plan.js";
export { filmedDepths, momentsIn, Profile } from "./dive-timeline/profile.js";
export * from "./generated/calculations.js";
export type * from "./generated/results.js";
export * from "./grades/starting-grade.js";
export { DiveProblem } from "./kit-advice/dive-problem.js";
export { kitAdvice } from "./kit-advice/kit-advice.js";
export type * from "./kit-advice/plan.js";
export { LARGEST_EXACT } from "./kit-advice/search.js";
export { MOST_RINGS_IN_A_ROW } from "./kit-advice/ways-to-mount.js";
export * from "./light/fitted-filter.js";
export { datesOf } from "./light-windows/days.js";
export { lightWindows } from "./light-windows/light-windows.js";
export { AIMS, type WindowAim } from "./light-windows/objective.js";
export type { CloudForecast, WindowsPlan } from "./light-windows/plan.js";
export { LOWEST_SUN_DEG } from "./light-windows/sun-states.js";
export type { NonEmpty } from "./lists/non-empty.js";
export { MODEL_VERSION } from "./model-version.js";
export { BANDS_NM, LIGHTS, type Light } from "./pictures/bands-left.js";
export {
  type ChartPicture,
  type ChartStages,
  type ChartUnderWater,
  chartUnderWater,
} from "./pictures/chart-under-water.js";
export * from "./pictures/colour-strip.js";
export * from "./pictures/exposure-budget.js";
export * from "./pictures/filter-map.js";
export * from "./pictures/light-over-depth.js";
export type { LinearRgb } from "./pictures/linear-rgb.js";
export * from "./pictures/mixed-light-map.js";
export * from "./pictures/red-in-post.js";
export { filterKinds } from "./reference/filter-kinds.js";
export { models } from "./reference/models.js";
export { waterTypes } from "./reference/water-types.js";
export type * from "./result/common.js";
export type * from "./result/dive-timelines.js";
export type * from "./result/kit-advice.js";
export type * from "./result/light-windows.js";
export type * from "./result/mounted-advice.js";
export type * from "./result/reference.js";
export type * from "./result/trip-advice.js";
export type * from "./scene/filter-mounting-scene.js";
export type * from "./scene/scene.js";
export * from "./scene/scene-problem.js";
export type { Piece, PieceMount, TripDive, TripGuest, TripPlan } from "./trip-advice/plan.js";
export { tripAdvice } from "./trip-advice/trip-advice.js";
export { TripProblem } from "./trip-advice/trip-problem.js";
