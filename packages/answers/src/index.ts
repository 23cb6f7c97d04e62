export { MODEL_VERSION as modelVersion } from "@sunfathom/planner";
export { type Answered, answer, prepare, type Ready, type Refused } from "./operations/answer.js";
export type { Operation } from "./operations/operation.js";
export { type OperationName, operations } from "./operations/table.js";
export { problem } from "./problem/problem.js";
export { type Reference, readReference, references } from "./reference/table.js";
export { toJson } from "./shape/to-json.js";
export { nearest } from "./validate/nearest.js";
export { member } from "./validate/pointer.js";
