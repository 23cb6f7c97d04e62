/** Who uses what on one dive: own filters, then the shelf, handed out so that the worst off is as well off as can be. */
import { checkpoint } from "../checkpoint.js";
import { AS_GOOD_DELTA_E00 } from "../filter-choice/decide.js";
import { itemAt } from "../lists/non-empty.js";
import type { GuestFits, Usable } from "./fittings.js";
import { type Claimant, handOut } from "./hand-out.js";
import { CameraLight, type Served } from "./light.js";
import type { TripDive, TripPlan } from "./plan.js";
import { at } from "./trip-problem.js";

/** Colour errors are compared as answers tell them: anyone can work out again who is worst off. */
const LEVELS_PER_DELTA_E00 = 100;
const levelOf = ({ delta_e00 }: Served): number => Math.round(delta_e00 * LEVELS_PER_DELTA_E00);

/** How a guest is served on a dive. */
export interface GuestServed {
  light: CameraLight;
  /** Absent without daylight. */
  served?: Served;
  without?: Served;
  used?: Usable;
}

export interface DiveServed {
  guests: GuestServed[];
  /** Guests whom a piece would have served better, had one been left. */
  wentWithout: number;
}

interface Choice {
  usable?: Usable;
  served: Served;
}

/** What a guest would use without the shelf, and what of the shelf is better. */
function choicesOf(
  light: CameraLight,
  { own, shelf }: GuestFits,
): { without: Served; bare: Choice; better: Choice[] } {
  const all = [...own, ...shelf];
  const { bare: without, behind } = light.among(all.map(({ piece }) => piece));
  const choices = all.map((usable, i): Choice => ({ usable, served: itemAt(behind, i) }));
  const bare = choices
    .filter(({ usable }) => usable?.from === "own")
    .reduce<Choice>((best, next) => (next.served.cost < best.served.cost ? next : best), { served: without });
  // What one owns is not put aside for what nobody can tell from it.
  const least = bare.served.cost - (bare.usable === undefined ? 0 : AS_GOOD_DELTA_E00);
  const better = choices.filter(
    ({ usable, served }) =>
      usable?.from === "shelf" && served.cost < least && levelOf(served) < levelOf(bare.served),
  );
  return { without, bare, better };
}

/**
 * @param d the place of the dive in the trip
 * @throws TripProblem where the model has no answer
 */
export function serveDive(
  dive: TripDive,
  d: number,
  { guests, shelf }: TripPlan,
  fits: readonly GuestFits[],
): DiveServed {
  const lights = new Map<string, CameraLight>();
  const all = guests.map(({ id, camera, kit }, g) => {
    checkpoint();
    const key = JSON.stringify(camera);
    const light = lights.get(key) ?? at({ dive: d, guest: g }, () => new CameraLight(dive, camera));
    if (!lights.has(key) && light.isDaylit)
      for (const [i, piece] of shelf.entries())
        at({ dive: d, guest: g, piece: { from: "shelf", at: i } }, () => light.requireSeen(piece));
    lights.set(key, light);
    if (light.isDaylit)
      for (const [i, piece] of kit.entries())
        if (piece.item === "lens_filter")
          at({ dive: d, guest: g, piece: { from: "own", at: i } }, () => light.requireSeen(piece));
    const choices = light.isDaylit
      ? at({ dive: d, guest: g }, () => choicesOf(light, itemAt(fits, g)))
      : undefined;
    return { id, light, choices };
  });
  const claimants = all.flatMap(({ id, choices }): Claimant[] =>
    choices === undefined || choices.better.length === 0
      ? []
      : [
          {
            id,
            bare: levelOf(choices.bare.served),
            pieces: choices.better.map(({ usable, served }) => ({
              id: usable?.piece.id ?? "",
              level: levelOf(served),
            })),
          },
        ],
  );
  const given = handOut(claimants, new Map(shelf.map(({ id, quantity }) => [id, quantity])));
  return {
    wentWithout: claimants.filter(({ id }) => !given.has(id)).length,
    guests: all.map(({ id, light, choices }): GuestServed => {
      if (choices === undefined) return { light };
      const { without, bare, better } = choices;
      const chosen = better.find(({ usable }) => usable?.piece.id === given.get(id)) ?? bare;
      return {
        light,
        without,
        served: chosen.served,
        ...(chosen.usable === undefined ? {} : { used: chosen.usable }),
      };
    }),
  };
}
