import { codesOf } from "../codes/coded.js";
import type { Mount } from "../codes/steps.js";
import type { TakeCodes } from "../codes/take.js";
import { VISIBLE_SPLIT_DELTA_E00 } from "../mixed-light/lights.js";
import type { TakeItem } from "../result/dive-advice.js";
import type { Scene } from "../scene/scene.js";
import type { Decisions } from "./decisions.js";
import { ownedName } from "./owned-name.js";

const say = codesOf<TakeCodes>();

const idOf = (id: string | undefined) => (id === undefined ? {} : { id });

/** What the plan uses, with the caller's ids where a kit is given; what a kit lacks is named without an id. */
export function takeFrom(d: Decisions): TakeItem[] {
  const { scene, filmed, filter, filterNamed, exposure, fitted, lampPlan, lampFilter } = d;
  const { kit } = scene;
  const take: TakeItem[] = [];
  if (filter.filter_kind !== "none") {
    take.push({ ...idOf(filter.filter_id), ...say("lens_filter", { filter: filterNamed }) });
  }
  if (exposure.neutral) {
    const { id, density } = exposure.neutral;
    take.push({ ...idOf(id), ...say("neutral_density", { density }) });
  }
  const mount = mountInPlan(d);
  if (mount) take.push(say("filter_mount", { mount }));
  if (lampPlan === "lamps_with_filter" && lampFilter) {
    const { item } = lampFilter;
    take.push({ id: item.id, ...say("lamp_filters", { filter: ownedName(item) }) });
  } else if (fitted?.kept && lampPlan !== "lamps_off") {
    take.push(say("lamp_filters", { filter: fitted.filter }));
  } else if (kit && lampPlan !== "lamps_with_daylight") take.push(...lacking(d));
  if (scene.lamps.length > 0) {
    const owned = kit?.filter(({ item }) => item === "lamp") ?? [];
    const lamp = say("lamp", checkOf(d));
    take.push(...(owned.length > 0 ? owned.map(({ id }) => ({ id, ...lamp })) : [lamp]));
  }
  if (filmed.lamps.length > 0 || isRoofed(scene)) take.push(say("dive_light"));
  const isOnCard = (scene.white_balance_mode ?? "card") === "card";
  return [...take, ...(isOnCard ? [say("card")] : []), say("spares")];
}

/** What lamps that are used are to give. */
const checkOf = ({ filmed: { lamps }, lampLight_lx: lux }: Decisions): TakeCodes["lamp"] =>
  lamps.length > 0
    ? { check: { lux, distance_m: Math.min(...lamps.map(({ distance_m }) => distance_m)) } }
    : {};

/** Whether there is no way straight up. */
const isRoofed = ({ overhead = "none" }: Scene): boolean => overhead !== "none" && overhead !== "overhang";

/** What a filter of the plan is on that could be changed under water. */
function mountInPlan({ scene, legs, exposure }: Decisions): Mount | undefined {
  const { filter_change_underwater: mount } = scene;
  return mount !== "none" && (legs.length > 1 || exposure.neutral) ? mount : undefined;
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
