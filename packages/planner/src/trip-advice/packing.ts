/** What goes with whom, and what goes on the boat. */
import type { Crate, Packing, PieceInUse, RingInUse, TripDivePlan } from "../result/trip-advice.js";
import type { GuestFits } from "./fittings.js";
import type { TripPlan } from "./plan.js";

const keyOf = ({ piece_id, from, holder, rings }: PieceInUse): string =>
  JSON.stringify([piece_id, from, holder, rings]);

/** What a guest needs over all dives, in the order in which it is first used. */
export function cratesOf({ guests }: TripPlan, dives: readonly TripDivePlan[]): Crate[] {
  return guests.map(({ id }) => {
    const pieces = new Map<string, PieceInUse & { dive_ids: string[] }>();
    for (const { id: dive_id, plans } of dives)
      for (const { guest_id, piece } of plans) {
        if (guest_id !== id || piece === undefined) continue;
        const known = pieces.get(keyOf(piece));
        if (known === undefined) pieces.set(keyOf(piece), { ...piece, dive_ids: [dive_id] });
        else known.dive_ids.push(dive_id);
      }
    return { guest_id: id, pieces: [...pieces.values()] };
  });
}

/** How many of each are used at a time, at most: by their ids. */
function mostAtATime(
  dives: readonly TripDivePlan[],
  idsOf: (piece: PieceInUse) => string[],
): Map<string, number> {
  const most = new Map<string, number>();
  for (const { plans } of dives) {
    const now = new Map<string, number>();
    for (const { piece } of plans)
      for (const id of piece === undefined ? [] : idsOf(piece)) now.set(id, (now.get(id) ?? 0) + 1);
    for (const [id, count] of now) most.set(id, Math.max(most.get(id) ?? 0, count));
  }
  return most;
}

const isShelf = ({ from }: Pick<RingInUse, "from">): boolean => from === "shelf";

export function packingOf(
  { guests, shelf, rings }: TripPlan,
  dives: readonly TripDivePlan[],
  fits: readonly GuestFits[],
): Packing {
  const pieces = mostAtATime(dives, (piece) => (isShelf(piece) ? [piece.piece_id] : []));
  const ringsUsed = mostAtATime(dives, ({ rings: all }) => all.filter(isShelf).map(({ ring_id }) => ring_id));
  const toGet = new Map<string, Packing["rings_to_get"][number]>();
  for (const [g, { id }] of guests.entries())
    for (const ring of fits[g]?.rings_to_get ?? []) {
      const key = `${ring.from_mm} ${ring.to_mm}`;
      toGet.set(key, { ...ring, guest_ids: [...(toGet.get(key)?.guest_ids ?? []), id] });
    }
  return {
    pieces: shelf.flatMap(({ id }) => {
      const quantity = pieces.get(id) ?? 0;
      return quantity === 0 ? [] : [{ piece_id: id, quantity }];
    }),
    rings: rings.flatMap(({ id, quantity: there }) => {
      const quantity = ringsUsed.get(id) ?? 0;
      return quantity === 0 ? [] : [{ ring_id: id, quantity, short_by: Math.max(0, quantity - there) }];
    }),
    rings_to_get: [...toGet.values()],
    not_needed: shelf.flatMap(({ id, quantity: there }) => {
      const quantity = there - (pieces.get(id) ?? 0);
      return quantity === 0 ? [] : [{ piece_id: id, quantity }];
    }),
  };
}
