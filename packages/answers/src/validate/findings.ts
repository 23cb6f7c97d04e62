import {
  type BatchRuleParameters,
  type CheckParameters,
  type FieldError,
  type MountingRuleParameters,
  maxErrors,
  type SceneRuleParameters,
  type TripRuleParameters,
} from "@sunfathom/contract";
import { checkpoint } from "@sunfathom/planner";

interface Codes
  extends CheckParameters,
    SceneRuleParameters,
    MountingRuleParameters,
    BatchRuleParameters,
    TripRuleParameters {}

/** What is wrong with one value, as a code with its parameters. */
export type Finding = {
  [Code in keyof Codes]: {
    /** JSON pointer to it. */
    pointer: string;
    code: Code;
    parameters: Codes[Code];
    /** What is allowed, where that is names alone, which are the same in every language. */
    allowed?: string;
    did_you_mean?: string;
  };
}[keyof Codes];

/** What is wrong so far. Once there is more than an answer lists, nothing further is looked at: checking costs no more. */
export class Findings {
  readonly list: Finding[] = [];
  /** What reading the request has already met. */
  readonly said: readonly FieldError[];
  /** Top-level fields whose value was sent under a name that is none: misspelt, or in another unit. */
  readonly meant = new Set<string>();
  /** Whether there is at least one error that is not listed. */
  more: boolean;

  constructor(said: readonly FieldError[] = []) {
    this.said = said.slice(0, maxErrors);
    this.more = said.length > maxErrors;
  }

  /** Takes a finding, made only if it will be reported. */
  add(finding: () => Finding): void {
    checkpoint();
    if (this.said.length + this.list.length < maxErrors) this.list.push(finding());
    else this.more = true;
  }

  get none(): boolean {
    return this.said.length === 0 && this.list.length === 0;
  }

  get pointers(): string[] {
    return [...this.said, ...this.list].map(({ pointer }) => pointer);
  }
}
