export { batchExamples } from "./batch/examples.js";
export type { BatchRequest } from "./batch/request.js";
export { type BatchRuleCode, type BatchRuleParameters, batchRuleCodes } from "./batch/rules.js";
export * from "./batch/values.js";
export {
  type AnswerForm,
  type AnswerName,
  answerNames,
  type SceneName,
  sceneNames,
} from "./computed.js";
export type * from "./generated/calculation-answer-types.js";
export * from "./generated/computed.js";
export * from "./generated/mounted-on.js";
export { type ComponentName, wireSchemas } from "./generated/wire-schemas.js";
export { type Form, type FormFields, formOf } from "./json-schema/form.js";
export { type JsonSchema, knownKeywords, reference, referenced } from "./json-schema/schema.js";
export type { KitAdviceAnswer } from "./kit-advice/answer.js";
export { kitAdviceExamples } from "./kit-advice/examples.js";
export type { KitAdviceRequest } from "./kit-advice/request.js";
export { type KitRuleCode, type KitRuleParameters, kitRuleCodes } from "./kit-advice/rules.js";
export * from "./kit-advice/values.js";
export {
  type CalculationName,
  calculationNames,
  pascal,
  pathOf,
  type ReferenceName,
  referenceNames,
} from "./operation-names.js";
export type { PictureLook } from "./picture/look.js";
export { pictureLookSchema } from "./picture/look-schema.js";
export { type PictureFormat, pictureDefaults } from "./picture/values.js";
export {
  type ProblemCode,
  problemCodes,
  problemStatuses,
} from "./problem/catalogue.js";
export type { CheckCode, CheckParameters, NumberRange, WantedType } from "./problem/check-parameters.js";
export { problemComponent } from "./problem/component-name.js";
export { type FieldErrorCode, fieldErrorCodes, maxErrors } from "./problem/error-codes.js";
export { type OutsideCode, outsideCodes } from "./problem/outside-codes.js";
export type { ErrorMeaning, ProblemPage } from "./problem/page-schema.js";
export type { FieldError, Problem } from "./problem/problem.js";
export { problemType, type SceneProblemCode, sceneProblemStatuses } from "./problem/scene-problems.js";
export type { QuizAnswersRequest, QuizMarks } from "./quiz/answers.js";
export { quizErrorCodes } from "./quiz/error-codes.js";
export { quizAnswersExamples, quizItemsExamples, quizPackageExamples } from "./quiz/examples.js";
export type { QuizItemsRequest, QuizPaper } from "./quiz/items.js";
export type { QuizPackageRequest } from "./quiz/package.js";
export * from "./quiz/values.js";
export type { FilterKindInfo, ModelInfo, WaterTypeInfo } from "./reference/reference.js";
export { type SceneRuleParameters, sceneRules } from "./rules/all.js";
export { allSceneRules } from "./rules/all-with-mounting.js";
export { mountingRuleConcerns, sceneRuleConcerns } from "./rules/concerns.js";
export { type MountingRuleParameters, mountingRules } from "./rules/mounting.js";
export { mountedOnRules } from "./rules/mounting-in-scene.js";
export { type RepeatedId, repeatedIds } from "./rules/repeated-ids.js";
export type { Rule, Violation } from "./rules/rule.js";
export {
  bottomBelowDeepest_m,
  cameraDefault,
  lampDefaults,
  sceneDefaults,
  wantedLeadFrom_m,
} from "./scene/defaults.js";
export { type SceneExample, type SceneExampleName, sceneExamples } from "./scene/examples.js";
export { flatLampNames } from "./scene/flat-lamp-names.js";
export { impliedDaylightBasis } from "./scene/implied-daylight-basis.js";
export { type Language, languages } from "./scene/languages.js";
export { mountingDefaults } from "./scene/mounting/defaults.js";
export {
  type MountingExample,
  type MountingExampleName,
  mountingExamples,
} from "./scene/mounting/examples.js";
export { mountingInSceneNames } from "./scene/mounting/names-in-scene.js";
export type { MountingScene, ResolvedMountingScene } from "./scene/mounting/scene.js";
export { placeTimeNames } from "./scene/place-time-names.js";
export type { ResolvedScene, Scene } from "./scene/scene.js";
export { shortestShutter_s, shutterOfFrame_s } from "./scene/shutter.js";
export type { TextUnits } from "./scene/text-units.js";
export * from "./scene/values.js";
export { fieldsBesideLists, waterBases } from "./scene/water-bases.js";
export type { CuttingTemplateRequest } from "./sheet/cutting-template.js";
export { cuttingTemplateExamples } from "./sheet/examples.js";
export { leastTape_mm, sheetLimits_mm } from "./sheet/values.js";
export type { DiveTimelinesAnswer } from "./trip/dive-timelines-answer.js";
export type { DiveTimelinesRequest } from "./trip/dive-timelines-request.js";
export { diveTimelinesExamples, lightWindowsExamples } from "./trip/examples.js";
export type { LightWindowsAnswer } from "./trip/light-windows-answer.js";
export type { LightWindowsRequest } from "./trip/light-windows-request.js";
export { type TripRuleCode, type TripRuleParameters, tripRuleCodes } from "./trip/rules.js";
export type { TripAdviceAnswer } from "./trip/trip-advice-answer.js";
export { tripAdviceExamples } from "./trip/trip-advice-examples.js";
export type { TripAdviceRequest } from "./trip/trip-advice-request.js";
export * from "./trip/values.js";
