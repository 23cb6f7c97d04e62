import type { Template } from "../item/template.js";
import { pathStopsPerMetre } from "../light/daylight-left.js";
import { WATERS } from "../light/scenes.js";

const RED_NM = 650;
const GREEN_NM = 550;

/** Lamp light passes the water twice. The loss per metre is stated, so its uncertainty does not matter. */
export const lampPath: Template = {
  id: "lamp_path",
  topic: "lamps",
  interaction: "numeric",
  levels: ["beginner", "working"],
  advises: ["light"],
  make({ draw, level, say, show }) {
    const water = draw.pick(WATERS);
    const lamp_m = draw.pick([0.5, 0.8, 1, 1.2]);
    const camera_m = level === "beginner" ? lamp_m : draw.pick([0.6, 0.9, 1.4, 1.5]);
    const depth_m = draw.pick([10, 12, 15, 18, 20]);
    const per_metre_stops = Number(pathStopsPerMetre(water, RED_NM).toFixed(1));
    const total_m = Number((lamp_m + camera_m).toFixed(1));
    const stops = per_metre_stops * total_m;
    const text = say.lamps.lamp_path;
    const perMetre = show.stops(per_metre_stops);
    const path = {
      operation: "add" as const,
      text: text.path({ lamp: show.m(lamp_m), camera: show.m(camera_m), total: show.m(total_m) }),
    };
    // Colour goes by what red loses more than green.
    if (level === "working") {
      const green_stops = Number(pathStopsPerMetre(water, GREEN_NM).toFixed(1));
      const more = Number((per_metre_stops - green_stops).toFixed(1));
      const behind = more * total_m;
      if (more < 0.2) return undefined;
      return {
        given: { water, depth_m, lamp_m, camera_m, per_metre_stops, green_stops },
        stem: text.behindStem({
          depth: show.m(depth_m),
          water: say.common.water[water],
          perMetre,
          green: show.stops(green_stops),
          lamp: show.m(lamp_m),
          camera: show.m(camera_m),
        }),
        answer: {
          interaction: "numeric",
          value: behind,
          unit: "stops",
          decimals: 1,
          tolerance: 0.1,
          anticipated: [
            { misconception: "red_loss_alone", value: stops },
            { misconception: "one_way_only", value: more * camera_m },
            { misconception: "one_way_only", value: more * lamp_m },
            { misconception: "depth_counted_for_lamps", value: more * depth_m },
          ],
        },
        steps: [
          path,
          {
            operation: "add",
            text: text.more({ perMetre, green: show.stops(green_stops), more: show.stops(more) }),
          },
          {
            operation: "multiply",
            text: text.last({
              perMetre: show.stops(more),
              total: show.m(total_m),
              stops: show.stops(behind, 2),
            }),
          },
        ],
        sources: ["path_attenuation", "jerlov_1976"],
        basis: "definition",
      };
    }
    return {
      given: { water, depth_m, lamp_m, camera_m, per_metre_stops },
      stem: text.stem({
        depth: show.m(depth_m),
        water: say.common.water[water],
        perMetre,
        lamp: show.m(lamp_m),
        camera: show.m(camera_m),
      }),
      answer: {
        interaction: "numeric",
        value: stops,
        unit: "stops",
        decimals: 1,
        tolerance: 0.1,
        anticipated: [
          { misconception: "one_way_only", value: per_metre_stops * camera_m },
          { misconception: "one_way_only", value: per_metre_stops * lamp_m },
          { misconception: "depth_counted_for_lamps", value: per_metre_stops * depth_m },
        ],
      },
      steps: [
        path,
        {
          operation: "multiply",
          text: text.last({ perMetre, total: show.m(total_m), stops: show.stops(stops, 2) }),
        },
      ],
      sources: ["path_attenuation", "jerlov_1976"],
      basis: "definition",
    };
  },
};
