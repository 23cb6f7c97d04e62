import {
  type ErrorMeaning,
  fieldErrorCodes,
  outsideCodes,
  type ProblemCode,
  type ProblemPage,
  problemKinds,
  problemType,
  quizErrorCodes,
} from "@sunfathom/contract";
import { mountingRuleMeanings } from "./mounting-rules.js";
import { outsideMeanings } from "./outside-meanings.js";
import { sceneRuleMeanings } from "./scene-rules.js";

/** The page of one kind of problem. */
export function problemPage(code: ProblemCode): ProblemPage {
  const { title, status, explanation } = problemKinds[code];
  const errors = meanings(code);
  return {
    type: problemType(code),
    code,
    title,
    status,
    explanation,
    ...(errors.length > 0 ? { errors } : {}),
  };
}

function meanings(code: ProblemCode): ErrorMeaning[] {
  switch (code) {
    case "invalid_scene":
      return [...listed(fieldErrorCodes), ...listedRules()];
    case "invalid_request":
      return [...listed(fieldErrorCodes), ...listed(quizErrorCodes.invalid_request)];
    case "invalid_query":
      return listed({ unknown_field: fieldErrorCodes.unknown_field });
    case "outside_the_model":
      return outsideCodes.map((outside) => ({ code: outside, meaning: outsideMeanings[outside] }));
    default: {
      const ofQuiz: Partial<Record<ProblemCode, Readonly<Record<string, string>>>> = quizErrorCodes;
      return listed(ofQuiz[code] ?? {});
    }
  }
}

function listed(codes: Readonly<Record<string, string>>): ErrorMeaning[] {
  return Object.entries(codes).map(([code, meaning]) => ({ code, meaning }));
}

function listedRules(): ErrorMeaning[] {
  return Object.entries({ ...sceneRuleMeanings(), ...mountingRuleMeanings() }).map(([code, says]) => ({
    code,
    meaning: `A rule between fields is broken: ${says}`,
  }));
}
