import type { FilterChoiceAnswer } from "../../packages/planner/src/index.js";

/** From this probability of the runner-up on either kind is as good. */
const CLOSE_FROM = 0.4;
/** A step of the grid of densities, and the rounding of both. */
const STEP = 0.05 + 1e-9;
const PROBABILITY = 0.03;

const isNear = (a: number, b: number): boolean => Math.abs(a - b) <= Math.max(0.02 * Math.abs(b), 0.05);

/** Whether a figure is near enough, by its name. */
function isHeld(name: string, fast: number, slow: number): boolean {
  if (name.includes("probability")) return Math.abs(fast - slow) <= PROBABILITY;
  if (name.includes("density")) return Math.abs(fast - slow) <= STEP;
  return isNear(fast, slow);
}

/** Parts in which a figure has a bound: errors and stops with their spread, probabilities, densities, and the same depth by depth. */
function figuresOf(value: unknown, path: string, out: Map<string, number>): Map<string, number> {
  if (typeof value === "number") {
    if (/delta_e00|_stops|_density|probability|_share/.test(path)) out.set(path, value);
  } else if (typeof value === "object" && value !== null)
    for (const [name, part] of Object.entries(value)) figuresOf(part, `${path}.${name}`, out);
  return out;
}

/** What of an answer is compared: advised, runner-up and depth by depth. What the best alone at a depth is called is a tie's toss. */
const comparedIn = ({
  ranking: _,
  reasons: __,
  uncertainty: ___,
  depths,
  ...answer
}: FilterChoiceAnswer) => ({
  ...answer,
  depths: depths.map(({ best_filter_density: ____, ...depth }) => depth),
});

export interface Compared {
  /** What is out of bounds, told. */
  found: string[];
  /** Both could be advised, and each way advises another. */
  isToss: boolean;
}

export function compare(
  fast: FilterChoiceAnswer | undefined,
  slow: FilterChoiceAnswer | undefined,
): Compared {
  if (fast === undefined || slow === undefined)
    return { found: fast === slow ? [] : ["one of them refuses"], isToss: false };
  const sameKind = fast.filter_kind === slow.filter_kind && fast.filter_id === slow.filter_id;
  if (!sameKind && slow.runner_up.probability_better >= CLOSE_FROM) return { found: [], isToss: true };
  const found = sameKind ? [] : [`${fast.filter_kind} in place of ${slow.filter_kind}`];
  const [ofFast, ofSlow] = [fast, slow].map((answer) => figuresOf(comparedIn(answer), "", new Map()));
  for (const name of new Set([...ofFast.keys(), ...ofSlow.keys()])) {
    const [a, b] = [ofFast.get(name), ofSlow.get(name)];
    if (a === undefined || b === undefined || !isHeld(name, a, b)) found.push(`${name}: ${a} for ${b}`);
  }
  return { found, isToss: false };
}
