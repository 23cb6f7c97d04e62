import type { Caution, Figure, Reason } from "../result/common.js";
import { CAUTIONS_EN, type CautionCode } from "./cautions-en.js";
import { REASONS_EN, type ReasonCode } from "./reasons-en.js";

type Parameters1<C extends ReasonCode> = Parameters<(typeof REASONS_EN)[C]> extends [infer P] ? [P] : [];

/** The numbers among the parameters of a text. */
export const figuresOf = (parameters: unknown): Figure[] =>
  Object.entries(parameters ?? {}).flatMap(([name, value]) =>
    typeof value === "number" ? [{ name, value }] : [],
  );

/** A reason with its text, and its numbers as figures. */
export function reason<C extends ReasonCode>(
  code: C,
  basis: Reason["basis"],
  ...[parameters]: Parameters1<C>
): Reason {
  const say = REASONS_EN[code] as (p?: unknown) => string;
  return { code, text: say(parameters), basis, figures: figuresOf(parameters) };
}

export const caution = (code: CautionCode): Caution => ({ code, text: CAUTIONS_EN[code] });
