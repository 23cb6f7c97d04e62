import type { RingChain } from "../result/filter-mounting.js";
import type { FilterMountingScene, StepRing } from "../scene/filter-mounting-scene.js";
import { ringIdTwice } from "./problems.js";
import { type Reason, reason } from "./reason.js";
import { compareRoutes, type RingRoute, shortestChain } from "./ring-chain.js";

/** Thickness taken for a ring that has yet to be bought. */
const RING_TO_BUY_mm = 3;

/** A way from one thread to the filter, and what was found out about it. */
export interface RingsFound {
  chain: RingChain;
  /** What would be screwed on: the chain, or the ring to buy where it does not close. */
  mounted: StepRing[];
  /** What asks for care: a ring to buy, or steps down. Empty where all is well. */
  faults: Reason[];
  reasons: Reason[];
}

/** @throws SceneProblem where two rings share an id. */
export function checkRingIds(rings: readonly StepRing[]): void {
  const seen = new Set<string>();
  for (const { id } of rings) {
    if (seen.has(id)) throw ringIdTwice(id);
    seen.add(id);
  }
}

/**
 * Ways from this thread to the filter's, to be tried in this order: the chain of fewest rings owned, the thinnest one, and one
 * ring to buy.
 */
export function ringsFrom(thread_mm: number, { filter_thread_mm, rings }: FilterMountingScene): RingsFound[] {
  const [from_mm, to_mm] = [thread_mm, filter_thread_mm ?? thread_mm];
  const fewest = shortestChain(from_mm, to_mm, rings);
  const thinnest = shortestChain(from_mm, to_mm, rings, "thinnest");
  if (!fewest || !thinnest) return [missing(from_mm, to_mm, rings)];
  const given = filter_thread_mm !== undefined;
  const owned = [owning(from_mm, to_mm, fewest, given)];
  if (compareRoutes(fewest, thinnest) !== 0) owned.push(owning(from_mm, to_mm, thinnest, given));
  if (fewest.rings.length === 0) return owned;
  return [...owned, toBuy(from_mm, to_mm, reason("rings_too_thick", "computed", { from_mm, to_mm }))];
}

function owning(from_mm: number, to_mm: number, route: RingRoute, given: boolean): RingsFound {
  const narrowest_mm = Math.min(from_mm, ...route.rings.map((ring) => ring.to_mm));
  const narrows = narrowest_mm < Math.min(from_mm, to_mm);
  const faults: Reason[] = [];
  if (narrows) faults.push(reason("rings_narrow", "computed", { narrowest_mm, from_mm, to_mm }));
  else if (to_mm < from_mm) faults.push(reason("rings_step_down", "computed", { from_mm, to_mm }));
  return {
    chain: {
      closes: true,
      from_mm,
      to_mm,
      rings: route.rings,
      total_thickness_mm: route.thickness_mm,
      ...(narrows ? { buy_from_mm: from_mm, buy_to_mm: to_mm } : {}),
    },
    mounted: route.rings,
    faults,
    reasons: [closing(given, from_mm, route)],
  };
}

function closing(given: boolean, thread_mm: number, { rings, thickness_mm }: RingRoute): Reason {
  if (!given) return reason("rings_filter_thread_assumed", "common_practice", { thread_mm });
  if (rings.length === 0) return reason("rings_not_needed", "computed", { thread_mm });
  const chain = rings.map(({ id, from_mm, to_mm }) => ({ id, from_mm, to_mm }));
  return reason("rings_close", "computed", { rings: chain, thickness_mm });
}

function missing(from_mm: number, to_mm: number, rings: readonly StepRing[]): RingsFound {
  const turned = rings.find((ring) => ring.from_mm === to_mm && ring.to_mm === from_mm);
  const found = toBuy(from_mm, to_mm, reason("rings_missing", "computed", { from_mm, to_mm }));
  return turned ? { ...found, reasons: [reason("rings_wrong_way", "computed", turned)] } : found;
}

const toBuy = (from_mm: number, to_mm: number, why: Reason): RingsFound => ({
  chain: {
    closes: false,
    from_mm,
    to_mm,
    rings: [],
    total_thickness_mm: 0,
    buy_from_mm: from_mm,
    buy_to_mm: to_mm,
  },
  mounted: [{ id: "to buy", from_mm, to_mm, thickness_mm: RING_TO_BUY_mm }],
  faults: [why],
  reasons: [],
});
