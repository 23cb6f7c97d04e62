import type { MisconceptionId } from "@sunfathom/words";
import type { Draw } from "../random/draw.js";
import { type Aim, rankOf } from "./aim.js";
import type { OptionDraft } from "./draft.js";
import type { Interval } from "./item.js";

/** Two numbers nearer than this to each other (as a ratio) make no fair pair of options. */
const LEAST_RATIO = 1.08;
/** Wrong options beside the right one. */
const WRONG_COUNT = 3;

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
 * The right number with three wrong ones, all positive: as many of them smaller as the aim says, so that its rank tells
 * nothing. Wrong ones inside the interval, too near to another option or reading the same are left out; undefined where too few
 * are left on either side.
 */
export function numberOptions(
  { draw, aim }: { draw: Draw; aim: Aim },
  { key, interval, wrong, text }: NumberOptions,
): OptionDraft[] | undefined {
  const smaller = rankOf(aim.size, WRONG_COUNT + 1);
  const room = { smaller, larger: WRONG_COUNT - smaller };
  const options: OptionDraft[] = [{ value: key, text: text(key), right: true }];
  for (const [misconception, value] of draw.shuffle(wrong)) {
    if (!Number.isFinite(value) || value <= 0) continue;
    if (interval && !outside(interval, value)) continue;
    const side = value < key ? "smaller" : "larger";
    const shown = text(value);
    if (room[side] === 0 || options.some((o) => o.text === shown || !apart(Number(o.value), value))) continue;
    room[side]--;
    options.push({ value, text: shown, right: false, misconception });
  }
  return options.length > WRONG_COUNT ? options : undefined;
}
