import { stopsToDensity } from "@sunfathom/optics";
import { FITS_WITHIN_STOPS } from "../camera/exposure-settings.js";
import { codesOf } from "../codes/coded.js";
import type { TakeCodes } from "../codes/take.js";
import { VISIBLE_SPLIT_DELTA_E00 } from "../mixed-light/lights.js";
import type { TakeItem } from "../result/dive-advice.js";
import type { KitItem } from "../scene/scene.js";
import type { Decisions } from "./decisions.js";
import { startOf } from "./legs.js";
import { tooBright } from "./too-bright.js";

const say = codesOf<TakeCodes>();

/** A sixth of a stop, in density. */
const HALF_A_CLICK = stopsToDensity(FITS_WITHIN_STOPS);

/** What to take from the shelf when a kit is given; what it lacks is named without an id. Empty without a kit. */
export function takeFrom({
  scene,
  filter,
  filterNamed,
  lampFilter,
  lampPlan,
  legs,
  middle,
}: Decisions): TakeItem[] {
  const { kit } = scene;
  if (!kit) return [];
  const take: TakeItem[] = [];
  if (filter.filter_id !== undefined) {
    take.push({ id: filter.filter_id, ...say("lens_filter", { filter: filterNamed }) });
  }
  const bright = tooBright(startOf(legs));
  if (bright) take.push(neutralDensity(kit, bright.density));
  const way = middle.ways_out
    .filter((other) => other.code === "lamp_filter")
    .find(({ split_left_delta_e00: left }) => left <= VISIBLE_SPLIT_DELTA_E00);
  if (lampPlan === "lamps_with_filter" && lampFilter) {
    take.push({ id: lampFilter.item.id, ...say("lamp_filters") });
  } else if (way) {
    const { kind, density } = way.parameters;
    take.push(say("lamp_filters_lacking", { kind, density }));
  }
  if (lampPlan !== "lamps_off" && lampPlan !== "none") {
    for (const { id } of kit.filter(({ item }) => item === "lamp")) {
      take.push({ id, ...say("lamp") });
    }
  }
  take.push(say("card"));
  return take;
}

/** The weakest neutral filter owned that is enough, or one to get. */
function neutralDensity(kit: readonly KitItem[], density: number): TakeItem {
  const owned = kit
    .filter(
      ({ item, filter_kind, filter_density = 0 }) =>
        item === "lens_filter" && filter_kind === "neutral" && filter_density >= density - HALF_A_CLICK,
    )
    .sort((a, b) => (a.filter_density ?? 0) - (b.filter_density ?? 0))[0];
  return {
    ...(owned === undefined ? {} : { id: owned.id }),
    ...say("neutral_density", { density: owned?.filter_density ?? density }),
  };
}
