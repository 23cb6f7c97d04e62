/** In which ways a filter can be held on a dive's camera, and what pieces each takes. */
import { checkpoint } from "../checkpoint.js";
import { judge } from "../filter-mounting/judge.js";
import { lensOf } from "../filter-mounting/lens.js";
import type { MountVerdict } from "../result/filter-mounting.js";
import type { FilterHolder, FilterMountingScene, StepRing } from "../scene/filter-mounting-scene.js";
import type { Scene } from "../scene/scene.js";
import { includes, NO_PIECE, onlyPiece, type PieceSet, sizeOf } from "./piece-set.js";
import type { HolderPiece, KitPiece, LensFilterPiece, PieceHolder, RingPiece } from "./plan.js";

export interface WayToMount {
  /** Rings and holders that it takes. */
  requires: PieceSet;
  /** Whether the filter can be changed at depth. */
  changeable: boolean;
  /** Absent where the dive does not say what its filters are mounted on. */
  holder?: FilterHolder;
  verdict?: Exclude<MountVerdict, "does_not_fit">;
}

/** So many rings in a row at most: with a filter, as many pieces as an exact search puts together. */
export const MOST_RINGS_IN_A_ROW = 3;

interface At<Piece> {
  piece: Piece;
  place: number;
}

const those = <Item extends KitPiece["item"]>(pieces: readonly KitPiece[], item: Item) =>
  pieces.flatMap((piece, place) =>
    piece.item === item ? [{ piece: piece as Extract<KitPiece, { item: Item }>, place }] : [],
  );

/** A chain of rings, and the pieces that they are. */
interface Chain {
  rings: StepRing[];
  requires: PieceSet;
}
const NO_RING: Chain = { rings: [], requires: NO_PIECE };

/** Every way over the rings from one thread to another that meets no thread twice. */
function chainsBetween(from_mm: number, to_mm: number, rings: readonly At<RingPiece>[]): Chain[] {
  if (from_mm === to_mm) return [NO_RING];
  const found: Chain[] = [];
  const onward = (chain: Chain, thread_mm: number, met: readonly number[]): void => {
    for (const { piece, place } of rings) {
      const { id, from_mm: from, to_mm: to, thickness_mm } = piece;
      if (from !== thread_mm || met.includes(to)) continue;
      const longer: Chain = {
        rings: [...chain.rings, { id, from_mm: from, to_mm: to, thickness_mm }],
        requires: chain.requires | onlyPiece(place),
      };
      if (to === to_mm) found.push(longer);
      else if (longer.rings.length < MOST_RINGS_IN_A_ROW) onward(longer, to, [...met, to]);
    }
  };
  onward(NO_RING, from_mm, [from_mm]);
  return found;
}

const isPiece = (holder: FilterHolder | undefined): holder is PieceHolder =>
  holder === "flip" || holder === "clip_on" || holder === "action_camera";
const canChange = (holder: FilterHolder): boolean => holder === "flip" || holder === "clip_on";

/** How a filter may be held, with the piece that this takes. A sheet has no thread, and what has a thread is no sheet. */
function holdersFor(
  { holder: own }: Scene,
  thread_mm: number | undefined,
  holders: readonly At<HolderPiece>[],
): { holder: FilterHolder; requires: PieceSet }[] {
  const free: FilterHolder[] = [
    "screw_on_lens",
    "screw_on_port",
    ...(thread_mm === undefined ? (["rear_sheet"] as const) : []),
    // One that the dive names is there already.
    ...(isPiece(own) ? [own] : []),
  ];
  return [
    ...free.map((holder) => ({ holder, requires: NO_PIECE })),
    ...holders
      .filter(({ piece }) => !free.includes(piece.holder))
      .map(({ piece, place }) => ({ holder: piece.holder, requires: onlyPiece(place) })),
  ];
}

/** The thread that the filter, or the first ring, goes into; undefined where it goes into none. */
function seatOf(scene: Scene, holder: FilterHolder): number | undefined {
  if (holder === "screw_on_lens") return scene.lens_thread_mm;
  return holder === "screw_on_port" || holder === "flip" ? scene.port_thread_mm : undefined;
}

/** Where a dive does not say what its filters are mounted on, each fits; a hinge or a clip then lets the diver change it. */
function unaskedWays(scene: Scene, holders: readonly At<HolderPiece>[]): WayToMount[] {
  const changeable = scene.filter_change_underwater !== "none";
  return [
    { requires: NO_PIECE, changeable },
    ...(changeable ? [] : holders)
      .filter(({ piece }) => canChange(piece.holder))
      .map(({ piece: { holder }, place }) => ({ requires: onlyPiece(place), changeable: true, holder })),
  ];
}

/** Whether one way makes another one needless: it takes no more pieces, and allows as much. */
const isAsGood = (one: WayToMount, other: WayToMount): boolean =>
  includes(other.requires, one.requires) && (one.changeable || !other.changeable);

const careOf = ({ verdict }: WayToMount): number => (verdict === "fits_with_care" ? 1 : 0);

/** Those that take the fewest pieces, of equals the one that asks for least care. */
function leastOf(ways: readonly WayToMount[]): WayToMount[] {
  const ordered = [...ways].sort(
    (a, b) => sizeOf(a.requires) - sizeOf(b.requires) || careOf(a) - careOf(b) || a.requires - b.requires,
  );
  return ordered.filter((way, i) => !ordered.slice(0, i).some((earlier) => isAsGood(earlier, way)));
}

/** @throws SceneProblem where the lens contradicts itself: said even where nothing is mounted */
export function requireLens(scene: Scene): void {
  if (scene.port_kind !== undefined)
    lensOf({ ...(scene as FilterMountingScene), f_number: scene.max_f_number });
}

/**
 * Every way to hold a filter on the camera of a dive; none where it does not fit. A ring that has yet to be bought holds nothing.
 * @param f_number smallest aperture of the dive, where corners are cut off first
 * @throws SceneProblem where the lens contradicts itself
 */
export function waysToMount(
  scene: Scene,
  filter: LensFilterPiece,
  f_number: number,
  pieces: readonly KitPiece[],
): WayToMount[] {
  const holders = those(pieces, "holder");
  if (scene.port_kind === undefined) return unaskedWays(scene, holders);
  const { id: _, item: __, ...size } = filter;
  // With a port, a scene has all that a mounting scene has.
  const mounting = { ...(scene as FilterMountingScene), ...size, f_number };
  const lens = lensOf(mounting);
  const rings = those(pieces, "ring");
  const ways: WayToMount[] = [];
  for (const { holder, requires } of holdersFor(scene, mounting.filter_thread_mm, holders)) {
    const seat_mm = seatOf(scene, holder);
    const chains =
      seat_mm === undefined ? [NO_RING] : chainsBetween(seat_mm, mounting.filter_thread_mm ?? seat_mm, rings);
    for (const chain of chains) {
      checkpoint();
      const change = holder === "flip" || holder === "clip_on" ? holder : "none";
      const { verdict, rings: found } = judge(
        { ...mounting, holder, rings: chain.rings, filter_change_underwater: change },
        lens,
        holder,
      );
      if (verdict === "does_not_fit" || found?.chain.closes === false) continue;
      ways.push({ requires: requires | chain.requires, changeable: canChange(holder), holder, verdict });
    }
  }
  return leastOf(ways);
}
