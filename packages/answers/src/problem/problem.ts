import {
  type FieldError,
  type Problem,
  type ProblemCode,
  problemKinds,
  problemType,
  type SceneProblemCode,
  sceneProblemKinds,
} from "@sunfathom/contract";
import type { Findings } from "../validate/findings.js";

/** A problem of the catalogue, with what went wrong this time. */
export function problem(code: ProblemCode, detail: string, errors?: readonly FieldError[]): Problem {
  return problemOf(code, problemKinds[code], detail, errors);
}

/** The same for the few kinds that a scene can have. Who meets no others carries no others. */
export function sceneProblem(
  code: SceneProblemCode,
  detail: string,
  errors?: readonly FieldError[],
): Problem {
  return problemOf(code, sceneProblemKinds[code], detail, errors);
}

function problemOf(
  code: ProblemCode,
  { title, status }: { title: string; status: number },
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

/** The problem of a scene that is not valid. */
export function invalidScene(findings: Findings): Problem {
  return sceneProblem("invalid_scene", detailOf(findings), findings.errors);
}

/** The problem of another body that is not valid. */
export function invalidRequest(findings: Findings): Problem {
  return problem("invalid_request", detailOf(findings), findings.errors);
}

function detailOf({ errors, more }: Findings): string {
  const [first] = errors;
  const where = first === undefined || first.pointer === "" ? "" : `${first.pointer}: `;
  const others = errors.length === 1 ? "" : ` And ${errors.length - 1} more.`;
  const unlisted = ` More than ${errors.length} values are wrong: only the first ${errors.length} are listed.`;
  return `${where}${first?.message}${more ? unlisted : others}`;
}
