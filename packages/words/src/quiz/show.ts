import type { quizLanguages, quizUnits } from "@sunfathom/contract";

/** Languages that questions are written in. */
export type QuizLanguage = (typeof quizLanguages)[number];

/** `metric_and_imperial` shows feet behind metres. */
export type QuizUnits = (typeof quizUnits)[number];

/** Numbers with their units, as the sentences and options of a language show them. */
export interface Show {
  /** At most `decimals` decimals, without trailing zeros. */
  number(value: number, decimals: number): string;
  /** That many decimals always. */
  fixed(value: number, decimals: number): string;
  /** That many decimals, behind its sign, plus or minus. */
  signed(value: number, decimals: number): string;
  /** A length in metres, with feet behind where asked for. */
  m(value: number): string;
  /** The same with one decimal always, for lengths that stand side by side. */
  m1(value: number): string;
  mm(value: number, decimals?: number): string;
  stops(value: number, decimals?: number): string;
  percent(value: number): string;
  kelvin(value: number): string;
  deg(value: number, decimals?: number): string;
  /** Two significant digits. */
  lx(value: number): string;
  iso(value: number): string;
  /** `least` decimals below 10, as cameras show f/8.0 beside f/5.6. */
  f(value: number, least?: 0 | 1): string;
  /** Exposure time. */
  s(value: number): string;
  density(value: number): string;
}
