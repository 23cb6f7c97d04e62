import type { RingBetween } from "../codes/trip-advice.js";
import { filterMounting } from "../filter-mounting/filter-mounting.js";
import type { FilterMountingAnswer, MountVerdict } from "../result/filter-mounting.js";
import type { RingInUse } from "../result/trip-advice.js";
import type { FilterHolder, StepRing } from "../scene/filter-mounting-scene.js";
import type { CameraMount, Piece, PieceMount, TripGuest } from "./plan.js";

/** How a piece is held on a camera. */
export interface Fit {
  holder: FilterHolder;
  verdict: Exclude<MountVerdict, "does_not_fit">;
  rings: RingInUse[];
  cautions: FilterMountingAnswer["cautions"];
  place: FilterMountingAnswer["place"];
  sources: string[];
}

/** Whether a piece fits a camera: how, by which ring it would, or not at all. */
export type Fitting = { fits: Fit } | { ring: RingBetween } | undefined;

/** What holds a round filter that says nothing of its holder. */
const FOR_THREADS: readonly FilterHolder[] = ["screw_on_lens", "screw_on_port"];

/** Rings of a guest and of the shop may be called alike: whose they are goes before. */
const OWN = "own ";
const SHELF = "shelf ";
const called = (rings: readonly StepRing[], whose: string): StepRing[] =>
  rings.map(({ id, from_mm, to_mm, thickness_mm }) => ({ id: whose + id, from_mm, to_mm, thickness_mm }));
const inUse = ({ id }: StepRing): RingInUse =>
  id.startsWith(OWN)
    ? { ring_id: id.slice(OWN.length), from: "own" }
    : { ring_id: id.slice(SHELF.length), from: "shelf" };

/** What of a piece decides where it goes. */
export function mountOf(piece: Piece): PieceMount {
  const {
    id: _,
    item: __,
    filter_kind: ___,
    filter_density: ____,
    filter_transmittance: _____,
    ...mount
  } = piece;
  return mount;
}

/** @throws SceneProblem where a lens contradicts itself */
function ask(
  mount: CameraMount,
  { piece, f_number, rings }: { piece: Piece; f_number: number; rings: StepRing[] },
  holder: FilterHolder | undefined,
): FilterMountingAnswer {
  return filterMounting({
    ...mount,
    ...mountOf(piece),
    f_number,
    filter_change_underwater: "none",
    rings,
    ...(holder === undefined ? {} : { holder }),
  });
}

/**
 * How a piece goes on a guest's camera: in its own holder, or a round filter in the first holder for a thread that `filter-mounting`
 * lists; looked at with the smallest aperture that the camera may use, where what cuts corners off does it first.
 * @param shelf the shop's rings
 * @throws SceneProblem where a lens contradicts itself
 */
export function fittingOf(
  { camera, rings: own }: TripGuest,
  mount: CameraMount,
  { piece, shelf }: { piece: Piece; shelf: readonly StepRing[] },
): Fitting {
  const f_number = camera.f_number ?? camera.max_f_number;
  // The guest's own rings come first where either would do.
  const rings = [...called(own, OWN), ...called(shelf, SHELF)];
  const asked = { piece, f_number, rings };
  const { holder } = piece;
  const allowed = holder === undefined ? FOR_THREADS : [holder];
  const { options } = ask(mount, asked, holder);
  let ring: RingBetween | undefined;
  for (const { verdict, holder: by } of options) {
    if (verdict === "does_not_fit" || !allowed.includes(by)) continue;
    const held = ask(mount, asked, by);
    const { ring_chain: chain } = held;
    if (chain === undefined || chain.closes) {
      const { place, cautions, sources } = held;
      return {
        fits: {
          holder: by,
          verdict,
          rings: (chain?.rings ?? []).map(inUse),
          cautions,
          place,
          sources,
        },
      };
    }
    ring ??= { from_mm: chain.from_mm, to_mm: chain.to_mm };
  }
  return ring && { ring };
}
