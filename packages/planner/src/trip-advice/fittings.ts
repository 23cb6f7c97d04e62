import { checkpoint } from "../checkpoint.js";
import type { RingBetween } from "../codes/trip-advice.js";
import { type Fit, type Fitting, fittingOf, mountOf } from "./fit.js";
import type { Piece, TripGuest, TripPlan } from "./plan.js";
import { at } from "./trip-problem.js";

/** A filter that a guest could use. */
export interface Usable {
  piece: Piece;
  from: "shelf" | "own";
  /** Absent where nothing is known of port and lens. */
  fit?: Fit;
}

/** What fits whom. */
export interface GuestFits {
  own: Usable[];
  shelf: Usable[];
  /** Rings with which something of the shelf would fit whom nothing fits. */
  rings_to_get: RingBetween[];
}

const isLensFilter = ({ item }: Piece): boolean => item === "lens_filter";

/** What fits each guest, in their order. Equal cameras and pieces alike in all but their glass are looked at once. */
export function fitsOf({ guests, shelf, rings }: TripPlan): GuestFits[] {
  const known = new Map<string, Fitting>();
  const fittingOn = (guest: TripGuest, piece: Piece): Fitting => {
    const { mount, camera, rings: own } = guest;
    if (mount === undefined) return undefined;
    const key = JSON.stringify([mount, camera.f_number ?? camera.max_f_number, own, mountOf(piece)]);
    if (!known.has(key)) {
      checkpoint();
      known.set(key, fittingOf(guest, mount, { piece, shelf: rings }));
    }
    return known.get(key);
  };
  return guests.map((guest, g) =>
    at({ guest: g }, () => {
      const toGet = new Map<string, RingBetween>();
      const among = (pieces: readonly Piece[], from: Usable["from"]): Usable[] =>
        pieces.filter(isLensFilter).flatMap((piece): Usable[] => {
          if (guest.mount === undefined) return [{ piece, from }];
          const fitting = fittingOn(guest, piece);
          if (fitting === undefined) return [];
          if ("fits" in fitting) return [{ piece, from, fit: fitting.fits }];
          if (from === "shelf") toGet.set(JSON.stringify(fitting.ring), fitting.ring);
          return [];
        });
      const own = among(guest.kit, "own");
      const usable = among(shelf, "shelf");
      return { own, shelf: usable, rings_to_get: usable.length > 0 ? [] : [...toGet.values()] };
    }),
  );
}
