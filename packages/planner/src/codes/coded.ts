/**
 * What a decision says: codes, each with typed parameters, and no sentence. A catalogue of codes is a type that names them and says
 * what each comes with; texts are made of it elsewhere, complete by that type, in any language.
 */

/** What a code comes with that says all by itself. */
export type Nothing = Record<never, never>;

/** A code of `Codes` with its parameters. */
export type Coded<Codes> = {
  [Code in keyof Codes & string]: { code: Code; parameters: Codes[Code] };
}[keyof Codes & string];

/** The last argument of whoever takes a code: left out where the code comes with nothing. */
export type With<Parameters> = keyof Parameters extends never ? [] : [parameters: Parameters];

/** Makes the codes of one catalogue. */
export const codesOf =
  <Codes>() =>
  <Code extends keyof Codes & string>(code: Code, ...[parameters]: With<Codes[Code]>) =>
    ({ code, parameters: parameters ?? {} }) as Coded<Pick<Codes, Code>>;

/** The code of what has more than that. */
export const codedOf = <Codes>({ code, parameters }: Coded<Codes>): Coded<Codes> =>
  ({ code, parameters }) as Coded<Codes>;

/**
 * Where a reason comes from: `computed` from the model, `common_practice` of the trade without a published source, or `judgement`,
 * where what decides is a bound or a usual value that was judged or is from memory.
 */
export type Basis = "computed" | "common_practice" | "judgement";

/** Why an answer is what it is. */
export type Reason<Reasons> = Coded<Reasons> & { basis: Basis };

/** Makes the reasons of one catalogue. */
export const reasonsOf =
  <Reasons>() =>
  <Code extends keyof Reasons & string>(code: Code, basis: Basis, ...[parameters]: With<Reasons[Code]>) =>
    ({ code, basis, parameters: parameters ?? {} }) as Reason<Pick<Reasons, Code>>;
