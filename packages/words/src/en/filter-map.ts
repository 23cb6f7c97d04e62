import type { FilterMapTexts } from "../picture-texts.js";
import { capital } from "./capital.js";
import { filterName } from "./filter-name.js";
import { atDepths, between, densityOf, depth, shown } from "./format.js";

export const filterMap: FilterMapTexts = {
  headline: ({ filter, is_advised, min_depth_m, max_depth_m }, u) =>
    is_advised
      ? `${capital(filterName(filter))} suits you best ${between(min_depth_m, max_depth_m, u)}`
      : `${atDepths(min_depth_m, max_depth_m, u)}, no filter pays`,
  reading:
    "Each number is a colour error: how far colours are off at that depth, behind a filter of that density. We take about 1 as the least you can see. The darker the field, the larger the error.",
  across: ({ kind }) => `Density of a ${kind} filter (0.3 costs about a stop)`,
  none: "none",
  at_density: ({ density }) => densityOf(density),
  at_depth: ({ depth_m }, u) => depth(depth_m, u),
  error: ({ delta_e00 }) => shown(delta_e00),
  band: ({ from, to }) =>
    from === to
      ? `Framed: advised, density ${densityOf(from)}`
      : `Framed: advised; between densities ${densityOf(from)} and ${densityOf(to)} you will see no difference`,
  no_band: "No density is framed: none is advised here.",
  dive: ({ min_depth_m, max_depth_m }, u) => `You film ${between(min_depth_m, max_depth_m, u)}`,
  description: ({ kind, densities, depths_m, delta_e00, filter, is_advised, max_depth_m }, u) => {
    const deepest = delta_e00[depths_m.length - 1] ?? [];
    const least = Math.min(...deepest);
    return [
      `Colour errors behind ${kind} filters of density 0 to ${densityOf(densities[densities.length - 1] ?? 0)}, from near the surface down to ${depth(max_depth_m, u)}.`,
      `At ${depth(max_depth_m, u)} the error is ${shown(deepest[0] ?? 0)} without a filter and ${shown(least)} at best, at density ${densityOf(densities[deepest.indexOf(least)] ?? 0)}.`,
      is_advised ? `Advised for all depths that you film: ${filterName(filter)}.` : "No filter is advised.",
    ].join(" ");
  },
};
