import { densityToStops, stopsToDensity } from "@sunfathom/optics";
import type { Draft } from "../item/draft.js";
import type { Maker, Template } from "../item/template.js";
import { lightAt } from "../light/remembered.js";
import { byDay, type Water } from "../light/scenes.js";

const SUN_DEG = 50;
const DEPTHS_M = [6, 7, 8, 9, 10, 12, 14, 15];
const LEAST_STOPS = 0.5;
const SOURCES = ["density", "jerlov_1976", "mean_sensor"];
const tenth = (value: number): number => Number(value.toFixed(1));

/** What red and green have lost, and by how much red is behind; undefined where that is little. */
function lossesAt(water: Water, depth_m: number) {
  const light = lightAt(byDay(water, SUN_DEG, depth_m)).depths[0];
  const red_stops = tenth(light.red_loss_stops.likely);
  const green_stops = tenth(light.green_loss_stops.likely);
  const difference = tenth(red_stops - green_stops);
  return difference < LEAST_STOPS ? undefined : { red_stops, green_stops, difference };
}

/** Density against depth: the deeper, the more there is to hold back. Losses are stated, so their uncertainty does not matter. */
export const densityToEvenOut: Template = {
  id: "density_to_even_out",
  topic: "filter",
  interaction: "numeric",
  levels: ["working", "expert"],
  make: (maker) => (maker.level === "expert" ? leftByFilter(maker) : densityWanted(maker)),
};

function densityWanted({ draw, say, show }: Maker): Draft | undefined {
  const water = draw.pick(["IB", "II"] as const);
  const depth_m = draw.pick(DEPTHS_M);
  const lost = lossesAt(water, depth_m);
  if (!lost) return undefined;
  const { red_stops, green_stops, difference } = lost;
  const density = stopsToDensity(difference);
  const text = say.filter.density_to_even_out;
  return {
    given: { water, depth_m, red_stops, green_stops },
    stem: text.stem({
      depth: show.m(depth_m),
      water: say.common.water[water],
      red: show.stops(red_stops),
      green: show.stops(green_stops),
    }),
    answer: {
      interaction: "numeric",
      value: density,
      unit: "",
      decimals: 2,
      tolerance: 0.02,
      anticipated: [
        { misconception: "density_is_stops", value: difference },
        { misconception: "red_loss_alone", value: stopsToDensity(red_stops) },
        { misconception: "losses_added_for_difference", value: stopsToDensity(red_stops + green_stops) },
      ],
    },
    steps: [
      {
        operation: "add",
        text: text.difference({
          red: show.number(red_stops, 1),
          green: show.number(green_stops, 1),
          difference: show.stops(difference),
        }),
      },
      {
        operation: "multiply",
        text: text.last({ difference: show.number(difference, 1), density: show.density(density) }),
      },
    ],
    sources: SOURCES,
    basis: "definition",
  };
}

const FILTERS = [
  { green: 0.15, red: 0.02 },
  { green: 0.2, red: 0.05 },
  { green: 0.3, red: 0.04 },
  { green: 0.4, red: 0.1 },
  { green: 0.5, red: 0.08 },
] as const;

/** A filter from its curve: it costs some red as well, and may leave green ahead or behind. */
function leftByFilter({ draw, say, show }: Maker): Draft | undefined {
  const water = draw.pick(["IB", "II", "1C", "3C"] as const);
  const depth_m = draw.pick(DEPTHS_M);
  const filter = draw.pick(FILTERS);
  const lost = lossesAt(water, depth_m);
  if (!lost) return undefined;
  const { red_stops, green_stops, difference } = lost;
  const costs = densityToStops(filter.green - filter.red);
  const left = difference - costs;
  // Where the filter takes more than there is, red would be ahead, and the question another one.
  if (left < 0.2) return undefined;
  const text = say.filter.density_to_even_out;
  const densities = { green: show.density(filter.green), red: show.density(filter.red) };
  return {
    given: {
      water,
      depth_m,
      red_stops,
      green_stops,
      green_density: filter.green,
      red_density: filter.red,
    },
    stem: text.leftStem({
      depth: show.m(depth_m),
      water: say.common.water[water],
      red: show.stops(red_stops),
      green: show.stops(green_stops),
      greenDensity: densities.green,
      redDensity: densities.red,
    }),
    answer: {
      interaction: "numeric",
      value: left,
      unit: "stops",
      decimals: 1,
      tolerance: 0.1,
      anticipated: [
        { misconception: "density_is_stops", value: difference - (filter.green - filter.red) },
        { misconception: "filter_costs_green_alone", value: difference - densityToStops(filter.green) },
        { misconception: "losses_added_for_difference", value: difference + costs },
      ],
    },
    steps: [
      {
        operation: "add",
        text: text.difference({
          red: show.number(red_stops, 1),
          green: show.number(green_stops, 1),
          difference: show.stops(difference),
        }),
      },
      { operation: "multiply", text: text.costs({ ...densities, stops: show.stops(costs, 2) }) },
      {
        operation: "add",
        text: text.left({
          difference: show.number(difference, 1),
          costs: show.number(costs, 2),
          left: show.stops(left),
        }),
      },
    ],
    sources: SOURCES,
    basis: "definition",
  };
}
