export { checkpoint, clockIn, MODEL_VERSION as modelVersion, onCheckpoint } from "@sunfathom/planner";
export type { CheckedBatch } from "./batches/check.js";
export { checkBatchHere, sayBatchRefusal } from "./batches/here.js";
export { type BatchPlan, type BatchScene, sceneAt } from "./batches/plan.js";
export { planBatch } from "./batches/plan-batch.js";
export { brief } from "./fields/brief.js";
export { pick } from "./fields/pick.js";
export { selectionOf } from "./fields/selection.js";
export { BUILD as build } from "./generated/build.js";
export * from "./generated/parts.js";
export { type KitSize, kitAdviceReady } from "./kit-advice/kit-advice.js";
export type { SceneSize } from "./operations/about.js";
export type { OperationName } from "./operations/calculations.js";
export type { Answered, Refused } from "./operations/outcome.js";
export { type Operation, operationsIn } from "./operations/table.js";
export { problem } from "./problem/problem.js";
export { readable } from "./problem/readable.js";
export { type Refusal, type Unanswered, unsaid } from "./problem/refusal.js";
export { said, sayRefusal } from "./problem/say-refusal.js";
export { type Reference, readReference, references } from "./reference/table.js";
export { lightSceneWith } from "./scene/light-scene.js";
export { mountedOn } from "./scene/mounted-on.js";
export { toBytes } from "./shape/bytes.js";
export { shapeOf } from "./shape/shape.js";
export { toJson } from "./shape/to-json.js";
export type { UddfFinding, UddfRead } from "./trips/dive-profile.js";
export { diveTimelinesReady } from "./trips/dive-timelines.js";
export { lightWindowsReady } from "./trips/light-windows.js";
export type {
  ReadyTrip,
  TimelineSize,
  TripAnswered,
  TripCalendar,
  TripSize,
  TripTongue,
  WindowsSize,
} from "./trips/ready.js";
export { tripAdviceReady } from "./trips/trip-advice.js";
export { checkLook } from "./validate/check-look.js";
export { checkRequest } from "./validate/check-request.js";
export { nearest } from "./validate/nearest.js";
export { member } from "./validate/pointer.js";
