import type { TakeItem } from "../result/dive-advice.js";
import type { Decisions } from "./decisions.js";
import { filterName } from "./steps.js";

/** What to take from the shelf when a kit is given; what it lacks is named without an id. Empty without a kit. */
export function takeFrom(d: Decisions): TakeItem[] {
  const { kit } = d.scene;
  if (!kit) return [];
  const take: TakeItem[] = [];
  if (d.filter.filter_id !== undefined) {
    take.push({
      id: d.filter.filter_id,
      what: filterName(d),
      why: "It leaves the least colour error of the filters owned.",
    });
  }
  const way = d.middle.ways_out.find((w) => w.way === "lamp_filter");
  if (d.lampPlan === "lamps_with_filter" && d.lampFilter) {
    const item = kit.find(
      (k) => k.item === "lamp_filter" && k.filter_kind === d.lampFilter?.lamp_filter_kind,
    );
    if (item)
      take.push({ id: item.id, what: "lamp filters", why: "They match the lamps to daylight at depth." });
  } else if (way) {
    take.push({
      what: `a ${way.lamp_filter_kind} lamp filter of density ${way.lamp_filter_density?.toFixed(2)} for each lamp`,
      why: "The kit has none: with it the lamps could stay on.",
    });
  }
  if (d.lampPlan !== "lamps_off") {
    for (const { id } of kit.filter(({ item }) => item === "lamp")) {
      take.push({ id, what: "a lamp", why: "The plan uses lamps." });
    }
  }
  take.push({ what: "a grey or white card", why: "Every balance in the plan is made on it." });
  return take;
}
