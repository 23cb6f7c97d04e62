export type { AnswerTexts, CauseText, StepText, TakeText } from "./answer-texts.js";
export type * from "./calculation-texts.js";
export type { CuttingTemplateTexts } from "./cutting-template-texts.js";
export { checkTexts } from "./en/problems/check.js";
export { problemDetails, repeatedName } from "./en/problems/details.js";
export { problemExplanations } from "./en/problems/explanations.js";
export { mountingRuleTexts } from "./en/problems/mounting-rules.js";
export { outsideLight } from "./en/problems/outside-light.js";
export { outsideMeanings } from "./en/problems/outside-meanings.js";
export { outsideMounting } from "./en/problems/outside-mounting.js";
export { problemPage } from "./en/problems/page.js";
export { fieldsTexts, queryDetails, queryTexts } from "./en/problems/query.js";
export { sceneRuleTexts } from "./en/problems/scene-rules.js";
export { serviceDetails } from "./en/problems/service.js";
export { problemTitles, sceneProblemTitles } from "./en/problems/titles.js";
export { type QuizTexts, quizTexts } from "./en/quiz/catalogue.js";
export type { CitationId } from "./en/quiz/common.js";
export { quizRefusals } from "./en/quiz/refusals.js";
export type { Words } from "./generated/words.js";
export type { GradeTexts } from "./grade-texts.js";
export { metresPerFoot } from "./numbers/lengths.js";
export type {
  ChartUnderWaterTexts,
  ColourStripTexts,
  ExposureBudgetTexts,
  FilterMapTexts,
  LightWithDepthTexts,
  MixedLightMapTexts,
  PictureTexts,
  RedInPostTexts,
} from "./picture-texts.js";
export type { CheckText, ProblemTexts, SceneProblemTexts } from "./problem-texts.js";
export type { FieldsErrors, QueryDetails, QueryErrors } from "./problems/query-texts.js";
export type { InstructorsOwn, ServiceDetail, ServiceDetails } from "./problems/service-details.js";
export type { FieldText, OutsideText, Texts, TextUnits } from "./problems/texts.js";
export type { Band } from "./quiz/bands.js";
export type { FilterColour } from "./quiz/colours.js";
export { type MisconceptionId, misconceptions } from "./quiz/misconceptions.js";
export type { PlayerHint, PlayerTexts } from "./quiz/player-texts.js";
export { playerTexts } from "./quiz/players.js";
export type { QuizRefusalCode, QuizRefusals } from "./quiz/refusals.js";
export type { QuizLanguage, QuizUnits, Show } from "./quiz/show.js";
export type { SlatePart, SlateTexts } from "./slate-texts.js";
export type { CratePieceSaid, CueLines, TripTexts } from "./trip-texts.js";
