import { type FieldError, maxErrors } from "@sunfathom/contract";

/** Errors found so far. Once there are more than an answer lists, nothing further is looked at: checking costs no more. */
export class Findings {
  readonly errors: FieldError[] = [];
  /** Fields whose value was sent in another unit, and so under a name that is none. */
  readonly meant = new Set<string>();
  /** Whether there is at least one error that is not listed. */
  more = false;

  /** Takes an error, made only if it will be reported. */
  add(error: () => FieldError): void {
    if (this.errors.length < maxErrors) this.errors.push(error());
    else this.more = true;
  }

  get none(): boolean {
    return this.errors.length === 0;
  }
}
