import { codesOf } from "../codes/coded.js";
import type { TakeCodes } from "../codes/take.js";
import { VISIBLE_SPLIT_DELTA_E00 } from "../mixed-light/lights.js";
import type { TakeItem } from "../result/dive-advice.js";
import type { Decisions } from "./decisions.js";
import { ownedName } from "./owned-name.js";

const say = codesOf<TakeCodes>();

const idOf = (id: string | undefined) => (id === undefined ? {} : { id });

/** What the plan uses, with the caller's ids where a kit is given; what a kit lacks is named without an id. */
export function takeFrom(d: Decisions): TakeItem[] {
  const { scene, filter, filterNamed, exposure, fitted, lampPlan, lampFilter } = d;
  const { kit } = scene;
  const take: TakeItem[] = [];
  if (filter.filter_kind !== "none") {
    take.push({ ...idOf(filter.filter_id), ...say("lens_filter", { filter: filterNamed }) });
  }
  if (exposure.neutral) {
    const { id, density } = exposure.neutral;
    take.push({ ...idOf(id), ...say("neutral_density", { density }) });
  }
  if (lampPlan === "lamps_with_filter" && lampFilter) {
    const { item } = lampFilter;
    take.push({ id: item.id, ...say("lamp_filters", { filter: ownedName(item) }) });
  } else if (fitted?.kept && lampPlan !== "lamps_off") {
    take.push(say("lamp_filters", { filter: fitted.filter }));
  } else if (kit) take.push(...lacking(d));
  if (scene.lamps.length > 0) {
    const owned = kit?.filter(({ item }) => item === "lamp") ?? [];
    take.push(...(owned.length > 0 ? owned.map(({ id }) => ({ id, ...say("lamp") })) : [say("lamp")]));
  }
  const isOnCard = (scene.white_balance_mode ?? "card") === "card";
  return [...take, ...(isOnCard ? [say("card")] : []), say("spares")];
}

/** A lamp filter that the kit lacks, where with it the lamps could stay on. */
function lacking({ middle }: Decisions): TakeItem[] {
  const way = middle.ways_out
    .filter((other) => other.code === "lamp_filter")
    .find(({ split_left_delta_e00: left }) => left <= VISIBLE_SPLIT_DELTA_E00);
  if (!way) return [];
  const { kind, density } = way.parameters;
  return [say("lamp_filters_lacking", { kind, density })];
}
