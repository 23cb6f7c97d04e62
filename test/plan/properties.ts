/** What holds of every plan: tried on seeded dives, short in `npm test` and long in `npm run prove`. */
import { planFor } from "./asked.js";
import { faultsIn } from "./plan-checks.js";
import type { Wire as Plan } from "./wire.js";

type Part = Record<string, unknown>;

/** Each number of a scene moved by two hundredths up or down, one at a time. */
function movedBy2Percent(scene: Part, turn: number): Part {
  const moves: Part[] = [];
  for (const factor of [1.02, 0.98]) {
    for (const [name, value] of Object.entries(scene)) {
      if (typeof value === "number") moves.push({ ...scene, [name]: value * factor });
    }
    const { lamps } = scene as { lamps?: Part[] };
    for (const name of lamps ? ["flux_lm", "distance_m"] : []) {
      moves.push({
        ...scene,
        lamps: lamps?.map((lamp) => ({ ...lamp, [name]: Number(lamp[name]) * factor })),
      });
    }
  }
  return moves[turn % moves.length] ?? scene;
}

const isOn = ({ lamp_plan }: Plan): boolean => !["none", "lamps_off"].includes(lamp_plan);
/** A density may move by this much, and a rounding of it. */
const DENSITY_MOVES = 0.15 + 1e-6;

/** How two plans for nearly the same dive differ beyond what a hair may make of them, unless one of them tells it. */
function jumpBetween(a: Plan, b: Plan): string | undefined {
  const told = (code: string) =>
    [a, b].some((p) => p.close_calls.some((c: { code: string }) => c.code === code));
  if (isOn(a) !== isOn(b) && !told("close_lamps")) return `lamps ${a.lamp_plan} to ${b.lamp_plan}`;
  const lampsTold = told("close_lamps") && a.lamp_plan !== b.lamp_plan;
  if (lampsTold || told("close_filter")) return undefined;
  if (a.filter_kind !== b.filter_kind) return `${a.filter_kind} to ${b.filter_kind}`;
  return Math.abs((a.filter_density ?? 0) - (b.filter_density ?? 0)) > DENSITY_MOVES
    ? `density ${a.filter_density} to ${b.filter_density}`
    : undefined;
}

export interface Tried {
  plans: number;
  close: number;
  faults: string[];
  jumps: string[];
}

/** Plans for so many dives, their faults, and what a move by two hundredths makes of every so-and-so-many-th. */
export function tryDives(
  dive: (index: number) => Part,
  { from, count, everyMoved }: { from: number; count: number; everyMoved: number },
): Tried {
  const tried: Tried = { plans: 0, close: 0, faults: [], jumps: [] };
  for (let index = from; index < from + count; index++) {
    const scene = dive(index);
    const plan = planFor(scene);
    if (!plan) continue;
    tried.plans++;
    if (plan.close_calls.length > 0) tried.close++;
    tried.faults.push(...faultsIn(plan).map((fault) => `${index} ${JSON.stringify(scene)}: ${fault}`));
    const moved = index % everyMoved === 0 ? planFor(movedBy2Percent(scene, index / everyMoved)) : undefined;
    const jump = moved && jumpBetween(plan, moved);
    if (jump) tried.jumps.push(`${index} ${JSON.stringify(scene)}: ${jump}`);
  }
  return tried;
}
