import { quizErrorCodes } from "../quiz/error-codes.js";
import { type ProblemCode, problemKinds } from "./catalogue.js";
import { fieldErrorCodes } from "./error-codes.js";
import type { ErrorMeaning, ProblemPage } from "./page-schema.js";
import { ruleMeanings } from "./rule-meanings.js";
import { problemType } from "./scene-problems.js";

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
  if (code === "invalid_scene") return [...listed(fieldErrorCodes), ...listedRules()];
  const ofQuiz: Partial<Record<ProblemCode, Readonly<Record<string, string>>>> = quizErrorCodes;
  const own = listed(ofQuiz[code] ?? {});
  return code === "invalid_request" ? [...listed(fieldErrorCodes), ...own] : own;
}

function listed(codes: Readonly<Record<string, string>>): ErrorMeaning[] {
  return Object.entries(codes).map(([code, meaning]) => ({ code, meaning }));
}

function listedRules(): ErrorMeaning[] {
  return Object.entries(ruleMeanings).map(([code, says]) => ({
    code,
    meaning: `A rule between fields is broken: ${says}`,
  }));
}
