import { densityToStops } from "@sunfathom/optics";
import type { Template } from "../item/template.js";
import { ISO_DIAL, onDial } from "./dial.js";

const DENSITIES = [0.2, 0.4, 0.5, 0.7, 0.8, 1, 1.1];
const STOPS = { beginner: [1, 2, 3], working: [0.5, 1, 1.5, 2, 2.5, 3] };
/** So little beyond the ends of what is right, as a share, lies no other value of the dial. */
const SLACK = 0.03;

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
    const exact = iso * 2 ** stops;
    const right = onDial(ISO_DIAL, exact);
    if (right === undefined) return undefined;
    const [value, other] = right;
    const factor = show.number(2 ** stops, 2);
    const text = say.exposure.pay_with_iso;
    const last = {
      operation: "recall" as const,
      text: text.last({ result: String(value), others: other === undefined ? [] : [String(other)] }),
    };
    const result = show.fixed(exact, 0);
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
        tolerance: Math.round(value * SLACK),
        accepted: {
          low: Math.round(Math.min(value, other ?? value) * (1 - SLACK)),
          high: Math.round(Math.max(value, other ?? value) * (1 + SLACK)),
        },
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
                operation: Number.isInteger(stops) ? "double" : "power",
                text: text.doubled({ iso, stops: show.number(stops, 1), result }),
              },
              last,
            ]
          : [
              { operation: "power", text: text.factor({ density: show.density(density), factor }) },
              { operation: "multiply", text: text.byFactor({ iso, factor, result }) },
              last,
            ],
      sources: ["iso_speed", "density"],
      basis: "definition",
    };
  },
};
