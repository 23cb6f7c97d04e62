/**
 * From the thread of lens or port to that of the filter over step rings owned: the shortest path from thread to thread
 * (Dijkstra 1959, A note on two problems in connexion with graphs, Numerische Mathematik 1, 269). Short means, in this order:
 * stepping down least, since a narrow ring takes from the corners; fewest rings; thinnest; ids in order. Where the corners ask
 * for it, thinnest comes before fewest. Each part of that cost only grows along a path, so that no ring is used twice.
 */
import { mapBoth } from "../lists/non-empty.js";
import type { StepRing } from "../scene/filter-mounting-scene.js";

export interface RingRoute {
  rings: StepRing[];
  /** Sum of all steps down. */
  stepped_down_mm: number;
  thickness_mm: number;
}

const START: RingRoute = { rings: [], stepped_down_mm: 0, thickness_mm: 0 };

/** Sums of lengths differ in their last digits with the order of adding. */
const SAME_mm = 1e-9;

/** What counts first among chains that step down alike. */
export type RingPreference = "fewest" | "thinnest";

/** Below zero where the first route is the better one; zero for the same ids in the same order. */
export function compareRoutes(a: RingRoute, b: RingRoute, preference: RingPreference = "fewest"): number {
  const down = a.stepped_down_mm - b.stepped_down_mm;
  if (Math.abs(down) > SAME_mm) return down;
  const count = a.rings.length - b.rings.length;
  const thickness = a.thickness_mm - b.thickness_mm;
  if (count !== 0 && preference === "fewest") return count;
  if (Math.abs(thickness) > SAME_mm) return thickness;
  if (count !== 0) return count;
  const ids = mapBoth(a.rings, b.rings, (one, other) => [one.id, other.id] as const);
  const [one, other] = ids.find(([one, other]) => one !== other) ?? ["", ""];
  return one === other ? 0 : one < other ? -1 : 1;
}

export const lengthened = (route: RingRoute, ring: StepRing): RingRoute => ({
  rings: [...route.rings, ring],
  stepped_down_mm: route.stepped_down_mm + Math.max(0, ring.from_mm - ring.to_mm),
  thickness_mm: route.thickness_mm + ring.thickness_mm,
});

/** The best chain, empty where both threads are the same; undefined where the rings do not lead there. */
export function shortestChain(
  from_mm: number,
  to_mm: number,
  rings: readonly StepRing[],
  preference: RingPreference = "fewest",
): RingRoute | undefined {
  const best = new Map<number, RingRoute>([[from_mm, START]]);
  const settled = new Set<number>();
  for (;;) {
    const next = [...best]
      .filter(([thread]) => !settled.has(thread))
      .reduce<[number, RingRoute] | undefined>(
        (least, entry) => (least && compareRoutes(least[1], entry[1], preference) <= 0 ? least : entry),
        undefined,
      );
    if (!next) return undefined;
    const [thread, route] = next;
    if (thread === to_mm) return route;
    settled.add(thread);
    for (const ring of rings) {
      if (ring.from_mm !== thread || settled.has(ring.to_mm)) continue;
      const longer = lengthened(route, ring);
      const known = best.get(ring.to_mm);
      if (!known || compareRoutes(longer, known, preference) < 0) best.set(ring.to_mm, longer);
    }
  }
}
