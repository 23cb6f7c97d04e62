import { type Coded, codesOf } from "../codes/coded.js";
import type { NamedFilter } from "../codes/named-filter.js";
import type { CloseCalls } from "../codes/summary.js";
import type { FilterChoiceFigures } from "../result/filter-choice.js";

export type CloseCall = Coded<CloseCalls>;

/** From this probability on that another plan is the better one, a plan is told as a close call. */
export const CLOSE_FROM = 0.42;

const say = codesOf<CloseCalls>();

/** The other filter, where it may as well be the better one. */
export function closeFilterCall({ runner_up }: FilterChoiceFigures, filter: NamedFilter): CloseCall[] {
  const { probability_better: probability } = runner_up;
  return probability >= CLOSE_FROM ? [say("close_filter", { filter, probability })] : [];
}
