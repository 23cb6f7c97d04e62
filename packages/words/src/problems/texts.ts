import type { TextUnits } from "@sunfathom/contract";

export type { TextUnits };

/** A text for each code of `Parameters`, made of what the code comes with. */
export type Texts<Parameters, Text> = {
  readonly [Code in keyof Parameters]: (parameters: Parameters[Code], units?: TextUnits) => Text;
};

/** What is wrong with a field, and what is allowed there. */
export interface FieldText {
  message: string;
  allowed: string;
}

/** The same where the model has no answer, and that in a sentence of its own. */
export interface OutsideText extends FieldText {
  detail: string;
}

/** A text for a field, in two halves. */
export const fieldText = (message: string, allowed: string): FieldText => ({ message, allowed });
