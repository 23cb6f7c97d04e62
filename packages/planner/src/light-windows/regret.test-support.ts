import { itemAt } from "../lists/non-empty.js";
import { daysOf } from "./days.js";
import { findWindows } from "./light-windows.js";
import { isSunny } from "./rank.js";
import { costBySingles, siteDay } from "./site-days.test-support.js";

/**
 * By how much the window that is ranked first costs more than the best one by single scenes, 0 for none.
 * @returns undefined for a day without enough sun
 */
export function regretOf(seed: number): number | undefined {
  const plan = siteDay(seed);
  // Most days far from the equator have sun enough: the others say nothing of how windows are ranked.
  if (!daysOf(plan).days.some(({ windows }) => windows.some(isSunny))) return undefined;
  const found = findWindows(plan);
  const { day, ranked } = itemAt(found.days, 0);
  const costs = new Map(
    day.windows.filter(isSunny).map((window) => [window.from_ms, costBySingles(plan, window)]),
  );
  const chosen = costs.get(itemAt(ranked, 0).window.from_ms) ?? Number.NaN;
  return chosen / Math.min(...costs.values()) - 1;
}
