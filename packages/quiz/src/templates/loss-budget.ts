import { exposureLoss } from "@sunfathom/planner";
import type { Template } from "../item/template.js";
import { remembered } from "../light/remember.js";
import { byDay, type Water } from "../light/scenes.js";

const SUN_DEG = 50;
const lossesAt = remembered(
  (water: Water, depth_m: number) => exposureLoss(byDay(water, SUN_DEG, depth_m)).depths[0],
);
const tenth = (value: number): number => Number(value.toFixed(1));

/** What light loses on its way, one part after the other. The parts are stated, so their uncertainty does not matter. */
export const lossBudget: Template = {
  id: "loss_budget",
  topic: "exposure",
  interaction: "numeric",
  levels: ["beginner", "working", "expert"],
  make({ draw, level, say, show }) {
    const water = draw.pick(["IB", "II", "1C", "3C"] as const);
    const depth_m = draw.pick([5, 8, 10, 12, 15]);
    const told = lossesAt(water, depth_m);
    const filter = draw.pick([1, 1.3, 1.7, 2, 2.3]);
    const all = {
      depth: tenth(told.depth_loss_stops?.likely ?? 0),
      distance: tenth(told.distance_loss_stops.likely),
      port: tenth(told.port_loss_stops.likely),
      filter,
    };
    const names =
      level === "beginner"
        ? (["depth", "filter"] as const)
        : (["depth", "distance", "port", "filter"] as const);
    const parts = names.map((name) => all[name]);
    if (parts.some((part) => part <= 0)) return undefined;
    const sum = tenth(parts.reduce((total, part) => total + part, 0));
    const text = say.camera.loss_budget;
    const said = {
      parts: names.map((name) => text.part[name]({ stops: show.stops(all[name]) })),
      water: say.common.water[water],
      depth: show.m(depth_m),
    };
    const added = {
      operation: "add" as const,
      text: text.sum({
        parts: parts.map((part) => show.number(part, 1)).join(" + "),
        sum: show.stops(sum),
      }),
    };
    const product = parts.reduce((total, part) => total * part, 1);
    if (level === "expert") {
      const factor = 2 ** sum;
      return {
        given: { water, depth_m, parts, asked: "factor" },
        stem: text.factorStem(said),
        answer: {
          interaction: "numeric",
          value: factor,
          unit: "",
          decimals: 0,
          tolerance: Math.max(1, Math.round(factor * 0.04)),
          anticipated: [
            { misconception: "stops_taken_for_factor", value: sum },
            { misconception: "two_for_each_stop_added", value: 2 * sum },
            { misconception: "part_left_out", value: 2 ** (sum - Math.min(...parts)) },
          ],
        },
        steps: [
          added,
          {
            operation: "power",
            text: text.last({ sum: show.number(sum, 1), factor: show.fixed(factor, 0) }),
          },
        ],
        sources: ["density", "jerlov_1976"],
        basis: "computed",
      };
    }
    return {
      given: { water, depth_m, parts, asked: "stops" },
      stem: text.stem(said),
      answer: {
        interaction: "numeric",
        value: sum,
        unit: "stops",
        decimals: 1,
        tolerance: 0.1,
        anticipated: [
          { misconception: "stops_multiplied", value: product },
          { misconception: "part_left_out", value: sum - Math.min(...parts) },
          { misconception: "largest_part_alone", value: Math.max(...parts) },
        ],
      },
      steps: [added],
      sources: ["density", "jerlov_1976"],
      basis: "computed",
    };
  },
};
