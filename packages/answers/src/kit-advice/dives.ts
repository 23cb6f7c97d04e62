/** The dives of a request, each a scene with what all have in common. */
import type { FieldError, KitAdviceRequest } from "@sunfathom/contract";
import type { Ready } from "../operations/outcome.js";
import type { TripTongue } from "../trips/ready.js";
import { topLevelName } from "../validate/pointer.js";
import type { Asked } from "./pieces.js";

type WireDive = KitAdviceRequest["dives"][number];

/** A dive that keeps the rules of a scene. */
export interface ReadyDive {
  id: string;
  ready: Ready;
  /** Where a fault in its scene stands in the request. */
  pointerOf: (pointer: string) => string;
}

/** A dive says more than what all have in common, and is told of where both say something. */
function pointing(common: object, { asked, place }: Asked<WireDive>): ReadyDive["pointerOf"] {
  return (pointer) => {
    const name = topLevelName(pointer);
    const isCommon = name !== undefined && !(name in asked.scene) && name in common;
    return (isCommon ? "/scene" : `/dives/${place}/scene`) + pointer;
  };
}

/** Every dive, or what is wrong with any of them: what all have in common is told once. */
export function divesOf(
  common: object,
  dives: readonly Asked<WireDive>[],
  { prepare }: TripTongue,
): { dives: ReadyDive[] } | { errors: FieldError[] } {
  const errors = new Map<string, FieldError>();
  const ready = dives.flatMap((dive): ReadyDive[] => {
    const pointerOf = pointing(common, dive);
    const prepared = prepare("filter-choice", { ...common, ...dive.asked.scene });
    if (prepared.status === "ready") return [{ id: dive.asked.id, ready: prepared, pointerOf }];
    for (const error of prepared.problem.errors ?? []) {
      const pointer = pointerOf(error.pointer);
      errors.set(`${pointer} ${error.code}`, { ...error, pointer });
    }
    return [];
  });
  return errors.size > 0 ? { errors: [...errors.values()] } : { dives: ready };
}
