import { type FieldError, maxErrors } from "@sunfathom/contract";

/** Errors found so far: the first few in full, all of them counted. */
export class Findings {
  readonly errors: FieldError[] = [];
  count = 0;

  /** Takes an error, made only if it will be reported. */
  add(error: () => FieldError): void {
    this.count += 1;
    if (this.errors.length < maxErrors) this.errors.push(error());
  }
}
