/** The pieces of a request in the planner's form: filters and lights as a scene has them, so that each is checked by the rules of a scene. */
import type { FieldError, KitAdviceRequest } from "@sunfathom/contract";
import type { KitItem, KitPiece, Scene } from "@sunfathom/planner";
import type { Ready, Refused } from "../operations/outcome.js";
import type { TripTongue } from "../trips/ready.js";

type WirePiece = KitAdviceRequest["pieces"][number];

/** A piece, and its place in the request. */
export interface Asked<T> {
  asked: T;
  place: number;
}

/** In the order of their ids, by the number of each character, the same in every place. */
export const byId = <T extends { id: string }>(list: readonly T[]): Asked<T>[] =>
  list.map((asked, place) => ({ asked, place })).sort((a, b) => (a.asked.id < b.asked.id ? -1 : 1));

/** Any dive: filters and lights are the same on all of them. */
const anyDive = { water_type: "IB", depth_m: 10 } as const;

const isFilter = ({ asked: { item } }: Asked<WirePiece>): boolean =>
  item === "lens_filter" || item === "lamp_filter";

/** Filters among pieces, in their order. */
const filtersAmong = (pieces: readonly Asked<WirePiece>[]): Asked<WirePiece>[] => pieces.filter(isFilter);

/** The fields that an item of a kit has. */
function kitItem({ asked }: Asked<WirePiece>): object {
  const { filter_thread_mm: _, filter_clear_diameter_mm: __, filter_thickness_mm: ___, ...item } = asked;
  return item;
}

/** Filters as the camera of a dive finds them to be. @param sensor what a scene says of its sensor */
export function filtersSeenBy(
  sensor: object,
  pieces: readonly Asked<WirePiece>[],
  { prepare }: TripTongue,
): Ready | Refused {
  const filters = filtersAmong(pieces);
  return prepare("filter-choice", {
    ...anyDive,
    ...sensor,
    ...(filters.length > 0 ? { kit: filters.map(kitItem) } : {}),
  });
}

export const kitOf = (ready: Ready): KitItem[] => (ready.scene as Scene).kit ?? [];

function lampReady({ asked }: Asked<WirePiece>, { prepare }: TripTongue): Ready | Refused {
  const { id: _, item: __, ...lamp } = asked;
  return prepare("filter-choice", { ...anyDive, lamps: [lamp] });
}

/** What is wrong with the filters, told of the pieces. */
export const ofFilters = (pieces: readonly Asked<WirePiece>[], errors: readonly FieldError[]): FieldError[] =>
  errors.map((error) => ({ ...error, pointer: filterPointer(pieces, error.pointer) }));

/** A pointer into a kit that is one into the pieces. */
export function filterPointer(pieces: readonly Asked<WirePiece>[], pointer: string): string {
  const [, nth = "", rest = ""] = /^\/kit\/(\d+)((?:\/.*)?)$/s.exec(pointer) ?? [];
  const filter = nth === "" ? undefined : filtersAmong(pieces)[Number(nth)];
  return filter === undefined ? "/pieces" : `/pieces/${filter.place}${rest}`;
}

const lampPointer = (place: number, pointer: string): string =>
  `/pieces/${place}${pointer.replace(/^\/lamps\/0/, "")}`;

/** The planner's pieces, or what is wrong with the lights among them. */
export function piecesOf(
  pieces: readonly Asked<WirePiece>[],
  tongue: TripTongue,
): { pieces: KitPiece[] } | { errors: FieldError[] } {
  const errors: FieldError[] = [];
  const told = pieces.flatMap((piece): KitPiece[] => {
    const { asked, place } = piece;
    const { id, from_mm, to_mm, thickness_mm, holder } = asked;
    if (asked.item === "lamp") {
      const ready = lampReady(piece, tongue);
      if (ready.status === "problem") {
        for (const error of ready.problem.errors ?? [])
          errors.push({ ...error, pointer: lampPointer(place, error.pointer) });
        return [];
      }
      const [lamp] = (ready.scene as Scene).lamps;
      return lamp === undefined ? [] : [{ id, item: "lamp", lamp }];
    }
    if (asked.item === "ring")
      return from_mm === undefined || to_mm === undefined || thickness_mm === undefined
        ? []
        : [{ id, item: "ring", from_mm, to_mm, thickness_mm }];
    if (asked.item === "holder") return holder === undefined ? [] : [{ id, item: "holder", holder }];
    if (asked.item === "lamp_filter") return [{ id, item: "lamp_filter" }];
    const { filter_thread_mm, filter_clear_diameter_mm, filter_thickness_mm } = asked;
    return [
      {
        id,
        item: "lens_filter",
        ...(filter_thread_mm === undefined ? {} : { filter_thread_mm }),
        ...(filter_clear_diameter_mm === undefined ? {} : { filter_clear_diameter_mm }),
        ...(filter_thickness_mm === undefined ? {} : { filter_thickness_mm }),
      },
    ];
  });
  return errors.length > 0 ? { errors } : { pieces: told };
}
