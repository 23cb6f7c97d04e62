import type { MisconceptionId } from "../misconceptions/catalogue.js";
import type { Draw } from "../random/draw.js";
import type { OptionDraft } from "./draft.js";
import type { Interval } from "./item.js";

/** Two numbers nearer than this to each other (as a ratio) make no fair pair of options. */
const LEAST_RATIO = 1.08;
/** Wrong options beside the right one, where so many are fair. */
const WRONG_COUNT = 3;
const LEAST_WRONG = 2;

export const outside = ({ low, high }: Interval, value: number): boolean => value < low || value > high;

const apart = (a: number, b: number): boolean => Math.max(a, b) / Math.min(a, b) >= LEAST_RATIO;

export interface NumberOptions {
  key: number;
  /** The model's doubt about the key; absent for what is exact. */
  interval?: Interval;
  wrong: readonly (readonly [MisconceptionId, number])[];
  text(value: number): string;
}

/**
 * The right number with up to three wrong ones, all positive. Wrong ones inside the interval, too near to another option or
 * reading the same are left out; undefined where fewer than two are left.
 */
export function numberOptions(
  draw: Draw,
  { key, interval, wrong, text }: NumberOptions,
): OptionDraft[] | undefined {
  const options: OptionDraft[] = [{ value: key, text: text(key), right: true }];
  for (const [misconception, value] of draw.shuffle(wrong)) {
    if (options.length > WRONG_COUNT) break;
    if (!Number.isFinite(value) || value <= 0) continue;
    if (interval && !outside(interval, value)) continue;
    const shown = text(value);
    if (options.some((o) => o.text === shown || !apart(Number(o.value), value))) continue;
    options.push({ value, text: shown, right: false, misconception });
  }
  return options.length > LEAST_WRONG ? options : undefined;
}
