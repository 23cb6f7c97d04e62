import {
  type FieldError,
  mountingDefaults,
  type TripAdviceRequest,
  tripCameraNames,
  tripDiveNames,
  tripPieceMountNames,
} from "@sunfathom/contract";
import type { KitItem, Piece, PieceMount, TripDive, TripGuest, TripPlan } from "@sunfathom/planner";
import type { Ready, Refused } from "../operations/outcome.js";
import { given } from "../scene/fields.js";
import type { TripTongue } from "./ready.js";

/** What stands in for the half of a scene that is not asked about. */
const anyDive = { water_type: "IB", depth_m: 10, sun_elevation_deg: 45 } as const;
const besideScene: ReadonlySet<string> = new Set(["local_time", "time_zone"]);

/** Where an error of a scene stands in the trip. */
type Place = (pointer: string) => string;

/** A part of a trip as a scene, and where what is said of it stands. */
export interface ReadPart {
  ready: Ready;
  place: Place;
}

interface ReadDive extends ReadPart {
  dive: TripDive;
  /** Its scene as the answer tells it. */
  told: object;
}

interface ReadGuest extends ReadPart {
  guest: TripGuest;
  /** Fields of the camera that a default filled in. */
  assumed: string[];
}
/** A trip in the planner's form, with what is needed to tell what is wrong with it. */
export interface ReadTrip {
  dives: ReadDive[];
  guests: ReadGuest[];
  plan: TripPlan;
  shelf: ReadPart | undefined;
}

const mountNames: ReadonlySet<string> = new Set(tripPieceMountNames);
const only = (source: object, names: readonly string[]): object =>
  given(source as Record<string, unknown>, names);

/** A piece as an item of a kit: without what says how it is held. */
function asItem(piece: object): object {
  return Object.fromEntries(
    Object.entries(piece).filter(([name]) => !mountNames.has(name) && name !== "quantity"),
  );
}

const { filter_thickness_mm, filter_material, sheet_thickness_mm, sheet_refractive_index } = mountingDefaults;
const usual = { filter_thickness_mm, filter_material, sheet_thickness_mm, sheet_refractive_index };

/** An item in its one form, with how it is held. */
const asPiece = (item: KitItem, wire: object): Piece => ({
  ...item,
  ...usual,
  ...(only(wire, tripPieceMountNames) as Partial<PieceMount>),
});

/** Brings each part of a trip into the planner's form. @returns what is wrong with them, where something is */
export function readTrip(
  request: TripAdviceRequest,
  { prepare }: TripTongue,
): ReadTrip | { errors: FieldError[] } {
  const errors: FieldError[] = [];
  const isReady = (ready: Ready | Refused, place: Place): ready is Ready => {
    if (ready.status === "ready") return true;
    for (const error of ready.problem.errors ?? []) errors.push({ ...error, pointer: place(error.pointer) });
    return false;
  };
  const dives = request.dives.flatMap((wire, d): ReadDive[] => {
    const place: Place = (pointer) =>
      besideScene.has(pointer.slice(1)) ? `/dives/${d}${pointer}` : `/dives/${d}/scene${pointer}`;
    const { id, local_time, time_zone, scene } = wire;
    const isPlaced =
      "latitude_deg" in scene || "longitude_deg" in scene || Object(scene).daylight_basis === "place_time";
    const ready = prepare("filter-choice", isPlaced ? { ...scene, local_time, time_zone } : scene);
    if (!isReady(ready, place)) return [];
    const told = toldOf(ready);
    const own = only(ready.scene, [...tripDiveNames, "local_time", "time_zone"]) as TripDive["scene"];
    const isSunAssumed = told.assumed.includes("sun_elevation_deg");
    const dive = { id, local_time, time_zone, scene: own, isSunAssumed };
    const { assumed } = told;
    const names: readonly string[] = tripDiveNames;
    return [
      {
        dive,
        told: { ...only(own, tripDiveNames), assumed: assumed.filter((name) => names.includes(name)) },
        ready,
        place,
      },
    ];
  });
  const guests = request.guests.flatMap((wire, g): ReadGuest[] => {
    const place: Place = (pointer) =>
      pointer.startsWith("/kit") ? `/guests/${g}${pointer}` : `/guests/${g}/camera${pointer}`;
    const { id, camera, kit = [] } = wire;
    const ready = prepare("dive-advice", {
      ...anyDive,
      ...camera,
      ...(kit.length === 0 ? {} : { kit: kit.map(asItem) }),
    });
    if (!isReady(ready, place)) return [];
    const {
      port_kind,
      rings = [],
      kit: items = [],
    } = ready.scene as Partial<TripGuest["mount"]> & {
      rings?: TripGuest["rings"];
      kit?: KitItem[];
    };
    const own = only(ready.scene, lightNames) as TripGuest["camera"];
    const mount = only(ready.scene, mountFields) as NonNullable<TripGuest["mount"]>;
    const guest: TripGuest = {
      id,
      camera: own,
      ...(port_kind === undefined ? {} : { mount }),
      rings,
      kit: items.map((item, i) => asPiece(item, kit[i] ?? {})),
    };
    const names: readonly string[] = tripCameraNames;
    return [{ guest, assumed: toldOf(ready).assumed.filter((name) => names.includes(name)), ready, place }];
  });
  const shelfPlace: Place = (pointer) => pointer.replace(/^\/kit/, "/shelf");
  const { shelf = [], rings = [] } = request;
  const ready =
    shelf.length === 0 ? undefined : prepare("filter-choice", { ...anyDive, kit: shelf.map(asItem) });
  const isShelfReady = ready === undefined || isReady(ready, shelfPlace);
  if (errors.length > 0 || !isShelfReady) return { errors };
  const { kit = [] } = (ready?.scene ?? {}) as { kit?: KitItem[] };
  return {
    dives,
    guests,
    shelf: ready && { ready, place: shelfPlace },
    plan: {
      dives: dives.map(({ dive }) => dive),
      guests: guests.map(({ guest }) => guest),
      shelf: kit.map((item, i) => ({ ...asPiece(item, shelf[i] ?? {}), quantity: shelf[i]?.quantity ?? 1 })),
      rings: rings.map(({ id, from_mm, to_mm, thickness_mm, quantity }) => ({
        id,
        from_mm,
        to_mm,
        thickness_mm,
        quantity,
      })),
    },
  };
}

const mountFrom = tripCameraNames.indexOf("port_kind");
const lightNames = tripCameraNames.slice(0, mountFrom);
const mountFields = tripCameraNames.slice(mountFrom).filter((name) => name !== "rings");

const toldOf = ({ canonical }: Ready): { assumed: string[]; filter_fits?: unknown[] } =>
  JSON.parse(canonical) as { assumed: string[] };
