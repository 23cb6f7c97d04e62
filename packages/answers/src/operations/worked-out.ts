import type { AnswerForm } from "@sunfathom/contract";
import { shapeOfAnswer } from "../shape/shape.js";
import type { Answered } from "./outcome.js";

/** An answer as the planner gave it, put into the contract's form when it is asked for. */
export class WorkedOut implements Answered {
  readonly status = "ok";
  #body: object | undefined;

  constructor(
    readonly form: AnswerForm,
    readonly unshaped: object,
    readonly canonical: string,
  ) {}

  get body(): object {
    this.#body ??= shapeOfAnswer(this.form)(this.unshaped) as object;
    return this.#body;
  }
}
