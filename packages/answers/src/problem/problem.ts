import {
  type FieldError,
  type Problem,
  type ProblemCode,
  problemStatuses,
  problemType,
  type SceneProblemCode,
  sceneProblemStatuses,
} from "@sunfathom/contract";
import type { ProblemTexts, SceneProblemTexts } from "@sunfathom/words";
import type { Findings } from "../validate/findings.js";

/** Texts for rules between fields. */
export type RuleTexts = Readonly<Record<string, Say>>;

/** What names a kind of problem in one language. */
type Titled<Code extends ProblemCode> = { readonly titles: Readonly<Record<Code, string>> };

/** A problem of the catalogue in one language, with what went wrong this time. */
export function problem(
  code: ProblemCode,
  { titles }: Titled<ProblemCode>,
  detail: string,
  errors?: readonly FieldError[],
): Problem {
  return problemOf({ code, title: titles[code], status: problemStatuses[code] }, detail, errors);
}

/** The same for the few kinds that a scene can have. Who meets no others carries no others. */
export function sceneProblem(
  code: SceneProblemCode,
  { titles }: Titled<SceneProblemCode>,
  detail: string,
  errors?: readonly FieldError[],
): Problem {
  return problemOf({ code, title: titles[code], status: sceneProblemStatuses[code] }, detail, errors);
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
export function invalidScene(findings: Findings, words: SceneProblemTexts, ruleTexts: RuleTexts): Problem {
  const errors = errorsOf(findings, { ...words.checks, ...ruleTexts });
  return sceneProblem("invalid_scene", words, words.details.invalid({ errors, more: findings.more }), errors);
}

/** The problem of another body that is not valid. */
export function invalidRequest(findings: Findings, words: ProblemTexts): Problem {
  const errors = errorsOf(findings, words.checks);
  return problem("invalid_request", words, words.details.invalid({ errors, more: findings.more }), errors);
}

/** What is wrong, in words. @throws Error where a rule has no text: then the kind of scene has those of another */
function errorsOf({ said, list }: Findings, texts: RuleTexts): FieldError[] {
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
