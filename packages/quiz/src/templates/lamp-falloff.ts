import type { Template } from "../item/template.js";
import { pathStopsPerMetre } from "../light/daylight-left.js";
import { WATERS } from "../light/scenes.js";

const RED_NM = 650;

/** How lamp light falls with distance. What the water takes is stated, so its uncertainty does not matter. */
export const lampFalloff: Template = {
  id: "lamp_falloff",
  topic: "lamps",
  interaction: "numeric",
  levels: ["beginner", "working", "expert"],
  advises: ["light"],
  make({ draw, level, say, show }) {
    const near_m = draw.pick([0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9, 1, 1.2]);
    const ratio = draw.pick(level === "beginner" ? [2, 4] : [1.5, 2, 3]);
    const far_m = Number((near_m * ratio).toFixed(2));
    const water = level === "beginner" ? undefined : draw.pick(WATERS);
    const per_metre_stops = water === undefined ? 0 : Number(pathStopsPerMetre(water, RED_NM).toFixed(1));
    const spread = 2 * Math.log2(ratio);
    const more_m = Number((far_m - near_m).toFixed(2));
    // Experts move the whole rig: what the lights light comes back to the camera through as much more water.
    const rig = level === "expert";
    const ways = rig ? 2 : 1;
    const taken = per_metre_stops * more_m * ways;
    const total = spread + taken;
    const text = say.lamps.lamp_falloff;
    const perMetre = show.stops(per_metre_stops);
    return {
      given: { near_m, far_m, per_metre_stops, ways, water: water ?? "" },
      stem:
        water === undefined
          ? text.stem({ near: show.m(near_m), far: show.m(far_m) })
          : (rig ? text.rigStem : text.waterStem)({
              near: show.m(near_m),
              far: show.m(far_m),
              perMetre,
              water: say.common.water[water],
            }),
      answer: {
        interaction: "numeric",
        value: total,
        unit: "stops",
        decimals: 1,
        tolerance: 0.1,
        anticipated: [
          { misconception: "inverse_linear", value: spread / 2 + taken },
          ...(water === undefined
            ? []
            : ([
                ...(rig ? ([{ misconception: "one_way_only", value: spread + taken / 2 }] as const) : []),
                { misconception: "water_forgotten", value: spread },
                { misconception: "distance_forgotten", value: taken },
              ] as const)),
        ],
      },
      steps: [
        {
          operation: level === "beginner" ? "double" : "power",
          text: text.spread({ ratio: show.number(ratio, 1), stops: show.stops(spread, 2) }),
        },
        ...(water === undefined
          ? []
          : [
              {
                operation: "multiply" as const,
                text: (rig ? text.waterTwice : text.water)({
                  more: show.m(more_m),
                  perMetre,
                  stops: show.stops(taken, 2),
                }),
              },
              {
                operation: "add" as const,
                text: text.last({
                  spread: show.number(spread, 2),
                  water: show.number(taken, 2),
                  total: show.stops(total),
                }),
              },
            ]),
      ],
      sources:
        water === undefined ? ["inverse_square"] : ["inverse_square", "path_attenuation", "jerlov_1976"],
      basis: "definition",
    };
  },
};
