import type { Caution, Figure, Reason } from "../result/common.js";
import { CAUTIONS_EN } from "./cautions-en.js";
import { MOUNTING_CAUTIONS_EN, MOUNTING_REASONS_EN } from "./mounting-en.js";
import { REASONS_EN } from "./reasons-en.js";

const REASONS = { ...REASONS_EN, ...MOUNTING_REASONS_EN };
const CAUTIONS = { ...CAUTIONS_EN, ...MOUNTING_CAUTIONS_EN };

type ReasonCode = keyof typeof REASONS;
type Parameters1<C extends ReasonCode> = Parameters<(typeof REASONS)[C]> extends [infer P] ? [P] : [];

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
  const say = REASONS[code] as (p?: unknown) => string;
  return { code, text: say(parameters), basis, figures: figuresOf(parameters) };
}

export const caution = (code: keyof typeof CAUTIONS): Caution => ({ code, text: CAUTIONS[code] });
