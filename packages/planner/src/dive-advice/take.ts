import type { TakeItem } from "../result/dive-advice.js";
import type { Decisions } from "./decisions.js";

/** What to take from the shelf when a kit is given; what it lacks is named without an id. Empty without a kit. */
export function takeFrom({ scene, filter, filterName, lampFilter, lampPlan, middle }: Decisions): TakeItem[] {
  const { kit } = scene;
  if (!kit) return [];
  const take: TakeItem[] = [];
  if (filter.filter_id !== undefined) {
    const why = "It leaves the least colour error of the filters owned.";
    take.push({ id: filter.filter_id, what: filterName, why });
  }
  const way = middle.ways_out.find((w) => w.way === "lamp_filter");
  if (lampPlan === "lamps_with_filter" && lampFilter) {
    const why = "They match the lamps to daylight at depth.";
    take.push({ id: lampFilter.item.id, what: "lamp filters, one for each lamp", why });
  } else if (way) {
    take.push({
      what: `a ${way.lamp_filter_kind} lamp filter of density ${way.lamp_filter_density?.toFixed(2)} for each lamp`,
      why: "The kit has none that matches: with it the lamps could stay on.",
    });
  }
  if (lampPlan !== "lamps_off") {
    for (const { id } of kit.filter(({ item }) => item === "lamp")) {
      take.push({ id, what: "a lamp", why: "The plan uses lamps." });
    }
  }
  take.push({ what: "a grey or white card", why: "Every balance in the plan is made on it." });
  return take;
}
