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
import { readable } from "./readable.js";

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

/** The problem of a scene that is not valid. @param texts for what is wrong with a value, and what breaks a rule between fields */
export function invalidScene(findings: Findings, words: SceneProblemTexts, texts: RuleTexts): Problem {
  const errors = errorsOf(findings, texts);
  return sceneProblem("invalid_scene", words, words.details.invalid({ errors, more: findings.more }), errors);
}

/** The problem of another body that is not valid. */
export function invalidRequest(findings: Findings, words: ProblemTexts): Problem {
  const errors = errorsOf(findings, { ...words.checks, ...words.batch, ...words.trip });
  return problem("invalid_request", words, words.details.invalid({ errors, more: findings.more }), errors);
}

/** The same of a batch, for who carries the texts of no other request. */
export function invalidBatch(
  findings: Findings,
  { checks, details }: SceneProblemTexts,
  { title, rules }: { title: string; rules: ProblemTexts["batch"] },
): Problem {
  const errors = errorsOf(findings, { ...checks, ...rules });
  return problemOf(
    { code: "invalid_request", title, status: 400 },
    details.invalid({ errors, more: findings.more }),
    errors,
  );
}

/** What is wrong, in words. @throws Error where a rule has no text: then the kind of scene has those of another */
function errorsOf({ said, list }: Findings, texts: RuleTexts): FieldError[] {
  const errors = list.map(({ pointer, code, parameters, allowed: names = "", did_you_mean }) => {
    const say = texts[code];
    if (say === undefined) throw new Error(code);
    const { allowed = names } = say(parameters as never);
    const { message } = say(readable(parameters) as never);
    const near = did_you_mean === undefined ? {} : { did_you_mean };
    return { pointer, code, message, allowed, ...near, parameters };
  });
  return [...said, ...errors];
}

type Say = (parameters: never) => { message: string; allowed?: string };
