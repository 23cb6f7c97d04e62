import { filterMounting } from "../filter-mounting/filter-mounting.js";
import type { DiveAdviceAnswer } from "../result/dive-advice.js";
import type { FilterMountingAnswer } from "../result/filter-mounting.js";
import type { MountedAdviceAnswer } from "../result/mounted-advice.js";
import type { FilterMountingScene } from "../scene/filter-mounting-scene.js";
import type { Scene } from "../scene/scene.js";
import type { diveAdvice } from "./dive-advice.js";
import { withMount } from "./mount/with-mount.js";

/** Filters that a plan puts on the lens: for colour, and neutral density. */
const filtersOf = ({ filter_kind, steps }: Pick<DiveAdviceAnswer, "filter_kind" | "steps">): number =>
  (filter_kind === "none" ? 0 : 1) + (steps.some(({ code }) => code === "neutral_density") ? 1 : 0);

/** The smallest aperture that the plan uses: what cuts corners off does it there first. */
function smallestAperture(scene: Scene, { steps }: DiveAdviceAnswer): number {
  const used = steps.flatMap(({ parameters }) => ("f_number" in parameters ? [parameters.f_number] : []));
  return Math.max(scene.f_number ?? 0, ...used) || scene.max_f_number;
}

/** So many filters, one behind the other, as a mounting scene: as thick together as they are. */
const asked = (scene: Scene, f_number: number, filters: number): FilterMountingScene => {
  const mountedOn = scene as FilterMountingScene;
  return {
    ...mountedOn,
    f_number,
    filter_thickness_mm: mountedOn.filter_thickness_mm * filters,
    sheet_thickness_mm: mountedOn.sheet_thickness_mm * filters,
  };
};

const fits = ({ verdict }: FilterMountingAnswer): boolean => verdict !== "does_not_fit";

/**
 * The plan for a scene that says what its filters are mounted on: what fits is mounted and told how; what does not is refused by name,
 * and the plan is made of what can be mounted. Without a filter to mount it is the plan of any other scene.
 * @param plan who makes plans: handed in, so that a page that has it already loads this alone
 * @throws SceneProblem as `diveAdvice` and `filterMounting` do
 */
export function mountedAdvice(scene: Scene, plan: typeof diveAdvice): MountedAdviceAnswer {
  const free = plan(scene);
  const wanted = filtersOf(free);
  const f_number = smallestAperture(scene, free);
  const mountOf = (filters: number) => filterMounting(asked(scene, f_number, filters));
  // Asked even where nothing is mounted: a lens that contradicts itself is refused whatever the light.
  const whole = mountOf(Math.max(1, wanted));
  if (wanted === 0) return free;
  const single = wanted > 1 && !fits(whole) ? mountOf(1) : whole;
  const mountable = fits(whole) ? wanted : fits(single) ? 1 : 0;
  // What a holder does not let change at depth stays on, whatever was wished for.
  const change = scene.filter_change_underwater === "none" ? "none" : single.filter_change_underwater;
  const isAsWished = mountable === wanted && change === scene.filter_change_underwater;
  const held = isAsWished ? free : plan({ ...scene, filter_change_underwater: change }, mountable);
  const filters = filtersOf(held);
  return withMount(held, {
    mount: mountable === 0 ? whole : filters === wanted ? whole : mountOf(Math.max(1, filters)),
    filters,
    noRoomForTwo: wanted > 1 && mountable === 1,
    refused: mountable === 0,
  });
}
