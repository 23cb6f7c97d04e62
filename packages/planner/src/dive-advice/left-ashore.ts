import { type Reason, reasonsOf } from "../codes/coded.js";
import type { LeftAshoreReasons } from "../codes/left-ashore.js";
import { splitWithLampFilter } from "../mixed-light/lamp-filter-split.js";
import type { KitItem } from "../scene/scene.js";
import type { Decisions } from "./decisions.js";
import { transmittanceOf } from "./owned-lamp-filter.js";
import { ownedName } from "./owned-name.js";

const reason = reasonsOf<LeftAshoreReasons>();

/**
 * Why each of these filters of the kit is not in the plan.
 * @param errorWith the colour error with a filter on the lens: handed in, as other calculations would load it for nothing
 */
export const whyLeftAshore = (
  d: Decisions,
  unused: readonly KitItem[],
  errorWith: (item: KitItem) => number,
): Reason<LeftAshoreReasons>[] =>
  unused.map((item) => {
    const filter = ownedName(item);
    if (item.item === "lamp_filter")
      return reason("lamp_filter_ashore", "computed", { filter, ...castOf(d, item) });
    if (item.filter_kind === "neutral") return reason("neutral_ashore", "computed", { filter });
    const error = errorWith(item);
    const times = error / d.filter.colour_error_delta_e00.likely;
    return reason("lens_filter_ashore", "computed", { filter, times, error });
  });

/** What it would leave between lamps and daylight, where both are there to be matched. */
function castOf({ scene, middle }: Decisions, item: KitItem): { cast?: { left: number } } {
  const curve = middle.verdict === "lights_fight" ? transmittanceOf(item) : undefined;
  return curve ? { cast: { left: splitWithLampFilter(scene, middle.depth_m, curve) } } : {};
}
