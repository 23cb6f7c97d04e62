import type { FieldError } from "@sunfathom/contract";
import { fieldText } from "../../problems/texts.js";

/** A name that stands twice in a JSON object. */
export const repeatedName = fieldText("The name stands twice in its object.", "each name once");

/** Sentences for the `detail` of problems. */
export const problemDetails = {
  /** Of all that is wrong with a body, the first thing. */
  invalid: ({ errors, more }: { errors: readonly FieldError[]; more: boolean }): string => {
    const [first] = errors;
    const where = first === undefined || first.pointer === "" ? "" : `${first.pointer}: `;
    const others = errors.length === 1 ? "" : ` And ${errors.length - 1} more.`;
    const unlisted = ` More than ${errors.length} values are wrong: only the first ${errors.length} are listed.`;
    return `${where}${first?.message}${more ? unlisted : others}`;
  },
  otherModel: ({ expected, is }: { expected: string; is: string }): string =>
    `The request expects model version ${expected}; this service runs ${is}.`,
};
