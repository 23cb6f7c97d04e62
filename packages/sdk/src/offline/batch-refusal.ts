import { type CheckedBatch, sayBatchRefusal } from "@sunfathom/answers";
import type { SceneProblemTexts } from "@sunfathom/words";
import { batchRules as de, problemTitles as deTitles } from "@sunfathom/words/de/problems";
import { batchRules as en, problemTitles as enTitles, sceneProblems } from "@sunfathom/words/en/problems";
import { batchRules as es, problemTitles as esTitles } from "@sunfathom/words/es/problems";
import { batchRules as fr, problemTitles as frTitles } from "@sunfathom/words/fr/problems";
import { ProblemError } from "../core/response-errors.js";
import { InvalidRequestError, ModelVersionMismatchError } from "../generated/problems.js";
import type { Language } from "../generated/types.js";

const texts = {
  en: { title: enTitles().invalid_request, rules: en },
  de: { title: deTitles().invalid_request, rules: de },
  es: { title: esTitles().invalid_request, rules: es },
  fr: { title: frTitles().invalid_request, rules: fr },
};

const errors: Readonly<Record<string, typeof ProblemError>> = {
  "/problems/invalid-request": InvalidRequestError,
  "/problems/model-version-mismatch": ModelVersionMismatchError,
};

/**
 * The error of a batch that has no plan, as a service's problem would become one.
 * @param problems texts of scenes in that language; English ones when left out
 */
export function batchRefusalError(checked: object, language: Language, problems?: object): ProblemError {
  const refused = checked as Exclude<CheckedBatch, { plan: unknown }>;
  const problem = sayBatchRefusal(refused, (problems ?? sceneProblems) as SceneProblemTexts, texts[language]);
  return new (errors[problem.type] ?? ProblemError)(problem, problem);
}
