/** What can be done on one dive with which pieces, and what it comes to. */
import type { Candidate } from "../filter-choice/candidates.js";
import { luminanceLoss } from "../filter-choice/choose.js";
import { sightOf } from "../filter-choice/merits.js";
import { itemAt, middleItem } from "../lists/non-empty.js";
import { NOMINAL } from "../uncertainty/nuisance.js";
import { errorIn, type Lighting, lightingsOf, smallestAperture } from "./lighting.js";
import { includes, onlyPiece, type PieceSet, sizeOf } from "./piece-set.js";
import type { KitDive, KitPiece } from "./plan.js";
import { requireLens, type WayToMount, waysToMount } from "./ways-to-mount.js";

export interface Option {
  /** All that it takes. */
  requires: PieceSet;
  /** Colour error over the depths of the dive, CIEDE2000. */
  delta_e00: number;
  /** Light that the filter on the lens takes, stops. */
  loss_stops: number;
  lighting: Lighting;
  candidate: Candidate;
  /** The piece on the lens, with how it is held. */
  filter?: { place: number; way: WayToMount };
}

/** What is known of one dive. */
export interface DiveOptions {
  dive: KitDive;
  lightings: Lighting[];
  /** The least colour error first; without those that another one makes needless. */
  options: Option[];
  /** Filters that fit this camera, by the places of their pieces. */
  fitting: PieceSet;
}

/** Neutral density is no colour filter: colour errors take it for granted wherever there is too much light. */
const isNeutral = ({ kind }: Candidate): boolean => kind === "neutral";

/** Whether a filter is one of neutral density on this dive. */
export const isNeutralOn = ({ lightings }: DiveOptions, id: string): boolean =>
  lightings.some(({ judged }) => judged.some(({ candidate }) => candidate.id === id && isNeutral(candidate)));

/** Lens filters of a lighting that are judged, each with its piece. */
function filtersIn({ judged }: Lighting, pieces: readonly KitPiece[]) {
  return judged.flatMap(({ candidate }, nth) => {
    const place = pieces.findIndex(({ id, item }) => item === "lens_filter" && id === candidate.id);
    const piece = place < 0 ? undefined : itemAt(pieces, place);
    return piece?.item === "lens_filter" && !isNeutral(candidate) ? [{ nth, candidate, place, piece }] : [];
  });
}

function optionsIn(
  lighting: Lighting,
  waysOf: (nth: number, place: number) => WayToMount[],
  pieces: readonly KitPiece[],
): Option[] {
  const { requires, judged } = lighting;
  const sight = sightOf(lighting.conditions, NOMINAL, [middleItem(lighting.depths)]);
  const bare: Option = {
    requires,
    delta_e00: errorIn(lighting, 0, false),
    loss_stops: 0,
    lighting,
    candidate: judged[0].candidate,
  };
  const filtered = filtersIn(lighting, pieces).flatMap(({ nth, candidate, place }) => {
    const loss_stops = luminanceLoss(sight, candidate);
    return waysOf(nth, place).map(
      (way): Option => ({
        requires: requires | onlyPiece(place) | way.requires,
        delta_e00: errorIn(lighting, nth, way.changeable),
        loss_stops,
        lighting,
        candidate,
        filter: { place, way },
      }),
    );
  });
  return [bare, ...filtered];
}

/** By colour error, then the less loss, the fewer pieces, and the earlier ones. */
const byError = (a: Option, b: Option): number =>
  a.delta_e00 - b.delta_e00 ||
  a.loss_stops - b.loss_stops ||
  sizeOf(a.requires) - sizeOf(b.requires) ||
  a.requires - b.requires;

/** @throws SceneProblem for what the model cannot answer for */
export function optionsFor(dive: KitDive, pieces: readonly KitPiece[]): DiveOptions {
  const { scene } = dive;
  requireLens(scene);
  const lightings = lightingsOf(scene, pieces);
  const known = new Map<string, WayToMount[]>();
  let fitting: PieceSet = 0;
  const all = lightings.flatMap((lighting) =>
    optionsIn(
      lighting,
      (nth, place) => {
        const piece = itemAt(pieces, place);
        if (piece.item !== "lens_filter") return [];
        const f_number = smallestAperture(lighting, nth);
        const { id: _, item: __, ...size } = piece;
        const key = JSON.stringify([size, f_number]);
        const ways = known.get(key) ?? waysToMount(scene, piece, f_number, pieces);
        known.set(key, ways);
        if (ways.length > 0) fitting |= onlyPiece(place);
        return ways;
      },
      pieces,
    ),
  );
  const ordered = all.sort(byError);
  const options = ordered.filter(
    ({ requires }, i) => !ordered.slice(0, i).some((better) => includes(requires, better.requires)),
  );
  return { dive, lightings, options, fitting };
}
