import { problemErrors } from "../generated/problem-table.js";
import { type ErrorResponse, type ProblemBody, ProblemError } from "./response-errors.js";

/** Whether JSON from outside is a problem (RFC 9457). */
export function isProblem(json: unknown): json is ProblemBody {
  return typeof json === "object" && json !== null && "type" in json && typeof json.type === "string";
}

/** The error of a problem: of its own class where the description knows its type. */
export function problemError(problem: ProblemBody, response: ErrorResponse): ProblemError {
  const Kind = Object.hasOwn(problemErrors, problem.type) ? problemErrors[problem.type] : undefined;
  return new (Kind ?? ProblemError)(problem, response);
}
