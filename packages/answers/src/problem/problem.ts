import {
  type FieldError,
  type Problem,
  type ProblemCode,
  problemStatuses,
  problemType,
  type SceneProblemCode,
  sceneProblemStatuses,
} from "@sunfathom/contract";
import { checkTexts, problemDetails, problemTitles, sceneProblemTitles } from "@sunfathom/words";
import type { Findings } from "../validate/findings.js";

/** Texts for rules between fields. */
export type RuleTexts = Readonly<Record<string, Say>>;

/** A problem of the catalogue, with what went wrong this time. */
export function problem(code: ProblemCode, detail: string, errors?: readonly FieldError[]): Problem {
  return problemOf({ code, title: problemTitles()[code], status: problemStatuses[code] }, detail, errors);
}

/** The same for the few kinds that a scene can have. Who meets no others carries no others. */
export function sceneProblem(
  code: SceneProblemCode,
  detail: string,
  errors?: readonly FieldError[],
): Problem {
  return problemOf(
    { code, title: sceneProblemTitles[code], status: sceneProblemStatuses[code] },
    detail,
    errors,
  );
}

function problemOf(
  { code, title, status }: Pick<Problem, "code" | "title" | "status">,
  detail: string,
  errors: readonly FieldError[] | undefined,
): Problem {
  return {
    type: problemType(code),
    title,
    status,
    code,
    detail,
    ...(errors === undefined ? {} : { errors: [...errors] }),
  };
}

/** The problem of a scene that is not valid. @param ruleTexts for what breaks a rule between its fields */
export function invalidScene(findings: Findings, ruleTexts: RuleTexts): Problem {
  const errors = errorsOf(findings, ruleTexts);
  return sceneProblem("invalid_scene", problemDetails.invalid({ errors, more: findings.more }), errors);
}

/** The problem of another body that is not valid. */
export function invalidRequest(findings: Findings): Problem {
  const errors = errorsOf(findings, {});
  return problem("invalid_request", problemDetails.invalid({ errors, more: findings.more }), errors);
}

/** What is wrong, in words. @throws Error where a rule has no text: then the kind of scene has those of another */
function errorsOf({ said, list }: Findings, ruleTexts: RuleTexts): FieldError[] {
  const texts: RuleTexts = { ...checkTexts, ...ruleTexts };
  const errors = list.map(({ pointer, code, parameters, allowed: names = "", did_you_mean }) => {
    const say = texts[code];
    if (say === undefined) throw new Error(code);
    const { message, allowed = names } = say(parameters as never);
    const near = did_you_mean === undefined ? {} : { did_you_mean };
    return { pointer, code, message, allowed, ...near, parameters };
  });
  return [...said, ...errors];
}

type Say = (parameters: never) => { message: string; allowed?: string };
