import { cautionsFor, filterAdvice } from "../cautions/cautions-for.js";
import type { FilterMainReasons } from "../codes/filter-choice.js";
import type { LightReasons } from "../codes/light.js";
import type { NamedFilter } from "../codes/named-filter.js";
import { type Candidate, candidatesFor, mountedIn, NO_FILTER, named } from "../filter-choice/candidates.js";
import { chooseAmong } from "../filter-choice/choose.js";
import { worthwhileFor } from "../filter-choice/decide.js";
import { densestTried } from "../filter-choice/densest.js";
import { mainReasons } from "../filter-choice/main-reasons.js";
import { finishOf, judge } from "../filter-choice/merits.js";
import { conditionsOf } from "../light/conditions.js";
import { depthsOf } from "../light/depths.js";
import { lastOf, type NonEmpty } from "../lists/non-empty.js";
import { sunReasons } from "../reasons/sun-reasons.js";
import type { AnswerParts } from "../result/common.js";
import type { FilterChoiceFigures } from "../result/filter-choice.js";
import type { KitItem, Scene } from "../scene/scene.js";
import { NOMINAL } from "../uncertainty/nuisance.js";

/** What the caller has on the lens: kept, or to be taken off for what is advised. */
export interface Mounted {
  filter: NamedFilter;
  kept: boolean;
  /** What would be a little better than what is kept. */
  better?: NamedFilter;
}

/** A choice for a plan: told why it is made, and no more. */
export interface Chosen extends FilterChoiceFigures, AnswerParts<FilterMainReasons & LightReasons> {
  /** Whether it is the densest that was tried, and the search alone ends there. */
  densest: boolean;
}

function choose(scene: Scene, candidates: Readonly<NonEmpty<Candidate>>): Chosen {
  const choice = chooseAmong(scene, candidates);
  const { answer, conditions, uncertainty, sources, search } = choice;
  const reasons = [...mainReasons(choice), ...sunReasons(conditions)];
  const advises = answer.filter_kind === "none" ? [] : [filterAdvice(scene)];
  const cautions = cautionsFor(scene, { reasons, uncertainty, advises });
  const densest = densestTried(search) !== undefined;
  return { ...answer, reasons, cautions, uncertainty, sources, densest };
}

/** The scene with nothing on the lens, whatever was given. */
export function withoutFilter(scene: Scene): Scene {
  const { filter_kind: _, filter_density: __, filter_transmittance: ___, filter_fits, ...bare } = scene;
  return filter_fits ? { ...bare, filter_fits: filter_fits.filter(({ id }) => id !== undefined) } : bare;
}

/** Colour error over the range with a filter of the kit alone on the lens. */
export function errorWith(scene: Scene, item: KitItem): number {
  const bare = withoutFilter(scene);
  const candidates = candidatesFor({ ...bare, kit: [item] });
  const judged = judge(conditionsOf(bare), NOMINAL, depthsOf(bare), candidates);
  const { merits } = lastOf(judged);
  return merits.reduce((sum, { delta_e00 }) => sum + delta_e00, 0) / merits.length;
}

const asCandidate = ({ filter_kind, filter_density, filter_id }: FilterChoiceFigures): Candidate => ({
  kind: filter_kind,
  ...(filter_density === undefined ? {} : { density: filter_density }),
  ...(filter_id === undefined ? {} : { id: filter_id }),
});

/**
 * The choice of a filter for the lens, given what is on it: what is there stays as long as changing it is worth no more than mounting
 * a filter has to be.
 */
export function chosenOver(
  scene: Scene,
  candidates = candidatesFor,
): { filter: Chosen; mounted: Mounted | undefined } {
  const free = choose(scene, candidates(scene));
  const mounted = mountedIn(scene);
  if (!mounted) return { filter: free, mounted: undefined };
  const filter = named(mounted);
  if (free.filter_kind !== "none") {
    const own = choose(scene, [NO_FILTER, mounted]);
    const lost = own.colour_error_delta_e00.likely - free.colour_error_delta_e00.likely;
    if (own.filter_kind !== "none" && lost <= worthwhileFor(finishOf(scene))) {
      const isSame = free.filter_kind === mounted.kind && free.filter_density === mounted.density;
      return {
        filter: own,
        mounted: { filter, kept: true, ...(isSame ? {} : { better: named(asCandidate(free)) }) },
      };
    }
  }
  return { filter: free, mounted: { filter, kept: false } };
}
