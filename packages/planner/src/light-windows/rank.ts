import { decide, type Scored } from "../filter-choice/decide.js";
import { itemAt } from "../lists/non-empty.js";
import type { DayWindow, Moment } from "./days.js";
import { windowCost } from "./objective.js";
import { LOWEST_SUN_DEG, meanOf, type StateFigures, type SunStates } from "./sun-states.js";

/** A window with what the model says of it, as means over its moments. */
export interface JudgedWindow {
  window: DayWindow;
  elevation_deg: number;
  cloud_oktas: number;
  figures: StateFigures;
  /** Place of the filter that is best for it. */
  candidate: number;
  delta_e00: number;
  /** What it leaves less than no filter. */
  gains_delta_e00: number;
  cost: number;
}

/** Whether the sun stands high enough all the time. */
export const isSunny = ({ moments }: DayWindow): boolean =>
  moments.every(({ elevation_deg }) => elevation_deg >= LOWEST_SUN_DEG);

const mean = (values: readonly number[]): number => values.reduce((sum, v) => sum + v, 0) / values.length;

/**
 * The filter that leaves the least colour error, and that error: no filter where none leaves less, and of densities that nobody can tell
 * apart the weakest. What a filter must gain to be worth the mounting is not asked: errors would jump where it just does.
 */
function bestFilter(
  states: SunStates,
  errors: readonly number[],
): { candidate: number; delta_e00: number; gains_delta_e00: number } {
  const scored = states.candidates.map(
    (candidate, i): Scored => ({ candidate, delta_e00: itemAt(errors, i) }),
  );
  const { advised } = decide(scored, 0);
  const delta_e00 = Math.min(...errors);
  return {
    candidate: states.candidates.indexOf(advised.candidate),
    delta_e00,
    gains_delta_e00: itemAt(errors, 0) - delta_e00,
  };
}

/** @param stateAt what the model says under a sun and sky: drawn between heights, or exact */
export function judgeWindow(
  states: SunStates,
  window: DayWindow,
  stateAt: (moment: Moment) => StateFigures = (moment) => states.at(moment),
): JudgedWindow {
  const figures = meanOf(window.moments.map(stateAt));
  const { candidate, delta_e00, gains_delta_e00 } = bestFilter(states, figures.errors);
  return {
    window,
    elevation_deg: mean(window.moments.map(({ elevation_deg }) => elevation_deg)),
    cloud_oktas: mean(window.moments.map(({ cloud_oktas }) => cloud_oktas)),
    figures,
    candidate,
    delta_e00,
    gains_delta_e00,
    cost: windowCost(states.aim, delta_e00, figures.light_stops),
  };
}

/** The cheapest first; the earlier of equals. */
export const ranked = (judged: readonly JudgedWindow[]): JudgedWindow[] =>
  [...judged].sort((a, b) => a.cost - b.cost || a.window.from_ms - b.window.from_ms);
