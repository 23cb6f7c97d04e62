import type { QuizRefusalCode, QuizRefusals } from "@sunfathom/words";

export type QuizProblemCode = QuizRefusalCode;

/** A code with what it comes with. */
export type QuizRefusal = {
  [Code in QuizRefusalCode]: { code: Code; parameters: QuizRefusals[Code] };
}[QuizRefusalCode];

/**
 * A request that cannot be answered: a stable code with its parameters. `field` names what is wrong where there is one. It
 * carries no sentence: those are made of the code at the edge of the service.
 */
export class QuizProblem extends Error {
  override readonly name = "QuizProblem";

  constructor(
    readonly refusal: QuizRefusal,
    readonly field?: string,
  ) {
    super(`${refusal.code} ${JSON.stringify(refusal.parameters)}`);
  }

  get code(): QuizProblemCode {
    return this.refusal.code;
  }
}
