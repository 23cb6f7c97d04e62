import type { FilterHolder, FilterMountingScene } from "../scene/filter-mounting-scene.js";
import { VERDICTS } from "./fault.js";
import type { Judged } from "./judge.js";

/**
 * Holders in the order in which the trade would try them, where nothing else decides (common practice): what changes at depth
 * first where that is wanted; frames made for an action camera; threads before hinges and clips, which have more to come loose;
 * behind a dome the lens's thread, and behind the lens what has none.
 */
export function holdersByHabit({
  filter_change_underwater: change,
  port_kind,
}: FilterMountingScene): FilterHolder[] {
  const habit: FilterHolder[] =
    port_kind === "none"
      ? ["action_camera", "screw_on_port", "flip", "clip_on", "screw_on_lens", "rear_sheet"]
      : ["screw_on_lens", "screw_on_port", "flip", "clip_on", "rear_sheet", "action_camera"];
  return change === "none" ? habit : [change, ...habit.filter((holder) => holder !== change)];
}

/** Whether a picture of a wall settles, before the trip, all that is in doubt. */
const isSettledByWall = ({ verdict, faults }: Judged): boolean =>
  verdict === "fits_with_care" && faults.every(({ code }) => code === "corners_close");

/**
 * Best first: by verdict, then by habit. The holder asked for leads unless it does not fit. A sheet behind the lens, which lays the
 * sensor open, comes after what only a picture of a wall has to show.
 */
export function byFitness(judged: readonly Judged[], asked: FilterHolder | undefined): Judged[] {
  const rank = (one: Judged): number => {
    const { holder, verdict } = one;
    if (holder === asked && verdict !== "does_not_fit") return -1;
    if (isSettledByWall(one)) return 0.4;
    return verdict === "fits" && holder === "rear_sheet" ? 0.6 : VERDICTS.indexOf(verdict);
  };
  return [...judged].sort((a, b) => rank(a) - rank(b));
}
