import { densityToStops } from "@sunfathom/optics";
import type { Template } from "../item/template.js";

const DENSITIES = [0.2, 0.4, 0.5, 0.7, 0.8, 1, 1.1];
const STOPS = { beginner: [1, 2, 3], working: [0.5, 1, 1.5, 2, 2.5, 3] };

/** The ISO that pays for a filter. */
export const payWithIso: Template = {
  id: "pay_with_iso",
  topic: "exposure",
  interaction: "numeric",
  levels: ["beginner", "working", "expert"],
  make({ draw, level, say, show }) {
    const iso = draw.pick([100, 125, 160, 200, 250, 320, 400, 500, 800]);
    const density = level === "expert" ? draw.pick(DENSITIES) : undefined;
    const stops =
      density === undefined
        ? draw.pick(level === "beginner" ? STOPS.beginner : STOPS.working)
        : densityToStops(density);
    const value = iso * 2 ** stops;
    const factor = show.number(2 ** stops, 2);
    const text = say.exposure.pay_with_iso;
    return {
      given: density === undefined ? { iso, stops } : { iso, density },
      stem:
        density === undefined
          ? text.stem({ iso: show.iso(iso), stops: show.stops(stops) })
          : text.densityStem({ iso: show.iso(iso), density: show.density(density) }),
      answer: {
        interaction: "numeric",
        value,
        unit: "",
        decimals: 0,
        // A tenth of a stop: no camera sets ISO more finely.
        tolerance: Math.round(value * 0.07),
        anticipated: [
          { misconception: "iso_added_per_stop", value: iso * (1 + stops) },
          { misconception: "iso_lowered_for_loss", value: iso / 2 ** stops },
          ...(density === undefined
            ? []
            : [{ misconception: "iso_by_density" as const, value: iso * (1 + density) }]),
        ],
      },
      steps:
        density === undefined
          ? [
              {
                operation: level === "beginner" ? "multiply" : "power",
                text: text.last({ iso, stops: show.number(stops, 1), result: show.fixed(value, 0) }),
              },
            ]
          : [
              { operation: "power", text: text.factor({ density: show.density(density), factor }) },
              { operation: "multiply", text: text.byFactor({ iso, factor, result: show.fixed(value, 0) }) },
            ],
      sources: ["iso_speed", "density"],
      basis: "definition",
    };
  },
};
