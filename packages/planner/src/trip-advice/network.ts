/**
 * A network whose flow goes round, of small whole costs: what lowers a cost as far as it goes, one after another, so that what came first
 * stays as low as it was.
 *
 * A flow costs least where no cycle of what is left open costs less than nothing (Klein 1967, A primal method for minimal cost flows,
 * Management Science 14, 205). Then each arc has a reduced cost of 0 or is at one of its bounds in every flow that costs as little, and
 * the flows that leave those arcs as they are all cost the same (complementary slackness; Ahuja, Magnanti and Orlin 1993, Network flows,
 * section 9.4; digits from memory). So a cost is settled by shutting them, and the next one is lowered on what is left open.
 */
import { checkpoint } from "../checkpoint.js";
import { itemAt } from "../lists/non-empty.js";

interface Arc {
  from: number;
  to: number;
  /** The most that flows, and what does now. */
  capacity: number;
  flow: number;
  /** Its flow is settled. */
  isShut: boolean;
}

/** One direction of an arc that is open: onwards, or back where something flows. */
interface Step {
  arc: number;
  from: number;
  to: number;
  cost: number;
  /** 1 onwards, -1 back. */
  sign: 1 | -1;
}

export class Network {
  readonly #arcs: Arc[] = [];

  /** @param nodes how many there are, counted from 0 */
  constructor(readonly nodes: number) {}

  /** @returns the number of the arc */
  add(arc: Omit<Arc, "isShut">): number {
    this.#arcs.push({ ...arc, isShut: false });
    return this.#arcs.length - 1;
  }

  flowOf(arc: number): number {
    return itemAt(this.#arcs, arc).flow;
  }

  /**
   * Lowers a cost as far as it goes, and keeps it there.
   * @param costs whole costs per unit of flow, by arc; 0 for all others
   */
  settle(costs: ReadonlyMap<number, number>): void {
    checkpoint();
    // Nothing that has no flow yet costs less than nothing: to leave it without is all there is to do.
    if ([...costs].every(([arc, cost]) => cost >= 0 && this.flowOf(arc) === 0)) {
      for (const [arc, cost] of costs) if (cost > 0) itemAt(this.#arcs, arc).isShut = true;
      return;
    }
    for (;;) {
      const { distances, cycle } = this.#shortest(costs);
      if (cycle === undefined) {
        this.#shut(costs, distances);
        return;
      }
      this.#push(cycle);
    }
  }

  #open(costs: ReadonlyMap<number, number>): Step[] {
    return this.#arcs.flatMap(({ from, to, capacity, flow, isShut }, arc): Step[] => {
      if (isShut) return [];
      const cost = costs.get(arc) ?? 0;
      return [
        ...(flow < capacity ? [{ arc, from, to, cost, sign: 1 } as const] : []),
        ...(flow > 0 ? [{ arc, from: to, to: from, cost: -cost, sign: -1 } as const] : []),
      ];
    });
  }

  /** Distances from anywhere (Bellman 1958, Ford 1956), or a cycle below 0 as soon as there is one. */
  #shortest(costs: ReadonlyMap<number, number>): { distances: number[]; cycle?: Step[] } {
    const steps = this.#open(costs);
    const distances: number[] = Array.from({ length: this.nodes }, () => 0);
    const cameBy: (Step | undefined)[] = Array.from({ length: this.nodes });
    for (;;) {
      let isNearer = false;
      for (const step of steps) {
        const nearer = itemAt(distances, step.from) + step.cost;
        if (nearer >= itemAt(distances, step.to)) continue;
        distances[step.to] = nearer;
        cameBy[step.to] = step;
        isNearer = true;
      }
      if (!isNearer) return { distances };
      const cycle = cycleIn(cameBy);
      if (cycle !== undefined) return { distances, cycle };
    }
  }

  #push(cycle: readonly Step[]): void {
    const room = cycle.map(({ arc, sign }) => {
      const { capacity, flow } = itemAt(this.#arcs, arc);
      return sign === 1 ? capacity - flow : flow;
    });
    const amount = Math.min(...room);
    for (const { arc, sign } of cycle) itemAt(this.#arcs, arc).flow += sign * amount;
  }

  #shut(costs: ReadonlyMap<number, number>, distances: readonly number[]): void {
    for (const [arc, { from, to }] of this.#arcs.entries()) {
      const reduced = (costs.get(arc) ?? 0) + itemAt(distances, from) - itemAt(distances, to);
      if (reduced !== 0) itemAt(this.#arcs, arc).isShut = true;
    }
  }
}

/** A cycle among the steps by which nodes were reached: it costs less than nothing, or none of them would have become nearer. */
function cycleIn(cameBy: readonly (Step | undefined)[]): Step[] | undefined {
  const seenFrom: number[] = [];
  for (const start of cameBy.keys()) {
    let at = start;
    for (let step = cameBy[at]; step !== undefined && seenFrom[at] === undefined; step = cameBy[at]) {
      seenFrom[at] = start;
      at = step.from;
    }
    if (seenFrom[at] === start && cameBy[at] !== undefined) return cycleFrom(at, cameBy);
  }
  return undefined;
}

function cycleFrom(node: number, cameBy: readonly (Step | undefined)[]): Step[] {
  const cycle: Step[] = [];
  let at = node;
  do {
    const step = cameBy[at];
    if (step === undefined) throw new RangeError(`Nothing leads to node ${at}.`);
    cycle.push(step);
    at = step.from;
  } while (at !== node);
  return cycle;
}
