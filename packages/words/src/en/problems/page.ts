import {
  batchRuleCodes,
  type ErrorMeaning,
  fieldErrorCodes,
  outsideCodes,
  type ProblemCode,
  type ProblemPage,
  problemStatuses,
  problemType,
  quizErrorCodes,
  tripRuleCodes,
} from "@sunfathom/contract";
import { batchRuleMeanings } from "./batch-rules.js";
import { fieldErrorMeanings, quizErrorMeanings } from "./error-meanings.js";
import { problemExplanations } from "./explanations.js";
import { mountingRuleMeanings } from "./mounting-rules.js";
import { outsideMeanings } from "./outside-meanings.js";
import { sceneRuleMeanings } from "./scene-rules.js";
import { problemTitles } from "./titles.js";
import { tripRuleMeanings } from "./trip-rules.js";

/** The page of one kind of problem. */
export function problemPage(code: ProblemCode): ProblemPage {
  const errors = meanings(code);
  return {
    type: problemType(code),
    code,
    title: problemTitles()[code],
    status: problemStatuses[code],
    explanation: problemExplanations[code],
    ...(errors.length > 0 ? { errors } : {}),
  };
}

function meanings(code: ProblemCode): ErrorMeaning[] {
  switch (code) {
    case "invalid_scene":
      return [...listed(fieldErrorMeanings, fieldErrorCodes), ...listedRules()];
    case "invalid_request":
      return [
        ...listed(fieldErrorMeanings, fieldErrorCodes),
        ...listed(quizErrorMeanings, quizErrorCodes.invalid_request),
        ...listed(batchRuleMeanings, batchRuleCodes),
        ...listed(tripRuleMeanings, tripRuleCodes),
      ];
    case "invalid_query":
      return listed(fieldErrorMeanings, ["unknown_field"]);
    case "outside_the_model":
      return listed(outsideMeanings, outsideCodes);
    default: {
      const ofQuiz: Partial<Record<ProblemCode, readonly (keyof typeof quizErrorMeanings)[]>> =
        quizErrorCodes;
      return listed(quizErrorMeanings, ofQuiz[code] ?? []);
    }
  }
}

function listed<Code extends string>(
  meanings: Readonly<Record<Code, string>>,
  codes: readonly Code[],
): ErrorMeaning[] {
  return codes.map((code) => ({ code, meaning: meanings[code] }));
}

function listedRules(): ErrorMeaning[] {
  return Object.entries({ ...sceneRuleMeanings(), ...mountingRuleMeanings() }).map(([code, says]) => ({
    code,
    meaning: `The scene breaks a rule between fields: ${says}`,
  }));
}
