import type { FilterVerdict, NamedFilter } from "../codes/named-filter.js";
import { type Candidate, NO_FILTER, named } from "../filter-choice/candidates.js";
import { creditedErrors, judge, mayFilterGain } from "../filter-choice/merits.js";
import { whereRedIsGone } from "../filter-choice/red-is-gone.js";
import type { Scene } from "../scene/scene.js";
import { NOMINAL } from "../uncertainty/nuisance.js";
import { pictureDepths } from "./picture-depths.js";
import { shownFilter } from "./shown-filter.js";

/** How far colours are off by density of a filter and depth. */
export interface FilterMap {
  /** Kind of the filters: that of the advised one, or of the best of those that are not. */
  kind: FilterVerdict;
  /** Half a stop apart; the first, 0, is no filter. */
  densities: number[];
  /** From near the surface to the deepest that is filmed. */
  depths_m: number[];
  /** Depth by depth, mean CIEDE2000 at each density, as a filter is credited with it. */
  delta_e00: number[][];
  filter: NamedFilter;
  is_advised: boolean;
  /** Densities that nobody can tell from the advised one; absent where none is advised, or its density is not known. */
  band?: { from: number; to: number };
  min_depth_m: number;
  max_depth_m: number;
}

/** To five stops, in half stops: as far as a choice searches first. */
const DENSITIES = Array.from({ length: 10 }, (_, i) => Math.round((i + 1) * 15) / 100);

/**
 * Errors behind filters of the kind that `filter-choice` advises, judged as it judges them.
 * @throws SceneProblem as `filterChoice` does
 */
export function filterMap(scene: Scene): FilterMap {
  const { conditions, candidate, is_advised, as_good } = shownFilter(scene);
  const kind = candidate.kind === "none" ? "red" : candidate.kind;
  const depths = pictureDepths(scene);
  const candidates: [Candidate, ...Candidate[]] = [
    NO_FILTER,
    ...DENSITIES.map((density) => ({ kind, density })),
  ];
  const judged = judge(conditions, NOMINAL, depths, candidates);
  const credit = {
    without: judged[0],
    redIsGone: whereRedIsGone(conditions, depths, judged),
    mayGain: mayFilterGain(conditions),
  };
  const errors = judged.map((one) => creditedErrors(one, credit));
  const density = is_advised ? candidate.density : undefined;
  const band = as_good ?? (density === undefined ? undefined : { from: density, to: density });
  return {
    kind,
    densities: [0, ...DENSITIES],
    depths_m: [...depths],
    delta_e00: depths.map((_, d) => errors.map((column) => column[d] ?? 0)),
    filter: named(candidate),
    is_advised,
    ...(band ? { band } : {}),
    min_depth_m: scene.min_depth_m,
    max_depth_m: scene.max_depth_m,
  };
}
