import type { Basis } from "../codes/coded.js";
import type { Figure } from "../result/common.js";
import type { WordedReason } from "./worded-reason.js";

/** The numbers among the parameters of a text. */
export const figuresOf = (parameters: unknown): Figure[] =>
  Object.entries(parameters ?? {}).flatMap(([name, value]) =>
    typeof value === "number" ? [{ name, value }] : [],
  );

type ReasonText = (parameters: never) => string;
type ReasonTexts<Texts> = Readonly<Record<keyof Texts, ReasonText>>;
type ParametersOf<Text extends ReasonText> = Parameters<Text> extends [infer P] ? [P] : [];

/**
 * What makes reasons with the texts of one catalogue, and their numbers as figures. Each decision has a catalogue of its own,
 * so that whoever computes one of them carries no other's texts.
 */
export function reasonsWith<Texts extends ReasonTexts<Texts>>(texts: Texts) {
  return <Code extends keyof Texts & string>(
    code: Code,
    basis: Basis,
    ...[parameters]: ParametersOf<Texts[Code]>
  ): WordedReason => ({
    code,
    text: texts[code](parameters as never),
    basis,
    parameters: (parameters ?? {}) as object,
  });
}
