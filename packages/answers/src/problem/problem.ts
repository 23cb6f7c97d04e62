import {
  type FieldError,
  type Problem,
  type ProblemCode,
  problemKinds,
  problemType,
} from "@sunfathom/contract";
import type { Findings } from "../validate/findings.js";

/** A problem of the catalogue, with what went wrong this time. */
export function problem(code: ProblemCode, detail: string, errors?: readonly FieldError[]): Problem {
  const { title, status } = problemKinds[code];
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
  return invalid("invalid_scene", findings);
}

/** The problem of a body that is not valid. */
export function invalid(code: "invalid_scene" | "invalid_request", { errors, count }: Findings): Problem {
  const [first] = errors;
  const where = first === undefined || first.pointer === "" ? "" : `${first.pointer}: `;
  const more = count === 1 ? "" : ` And ${count - 1} more.`;
  const unlisted = count > errors.length ? ` Only the first ${errors.length} are listed.` : "";
  return problem(code, `${where}${first?.message}${more}${unlisted}`, errors);
}
