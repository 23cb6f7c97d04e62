import type { MixedLightMapTexts } from "../picture-texts.js";
import { textOf } from "../text-of.js";
import { cautions } from "./cautions.js";
import { between, depth, distance, lumens } from "./format.js";
import { waysOut } from "./ways-out.js";

export const mixedLightMap: MixedLightMapTexts = {
  headline: ({ verdict, depth_m, own_distance_m }, u) =>
    ({
      lights_fight: `A ${depth(depth_m, u)}, los focos de vídeo a ${distance(own_distance_m, u)} y la luz del día no casan`,
      lamps_lead: `A ${depth(depth_m, u)}, mandan los focos de vídeo a ${distance(own_distance_m, u)}`,
      daylight_leads: `A ${depth(depth_m, u)}, la luz del día manda sobre los focos de vídeo a ${distance(own_distance_m, u)}`,
      lamps_only: `A ${depth(depth_m, u)}, los focos de vídeo son la única luz`,
      daylight_only: `A ${depth(depth_m, u)}, la luz del día es la única luz`,
    })[verdict],
  assumed: ({ flux_lm, own_distance_m }, u) =>
    `No indicó focos de vídeo: esto vale para dos de ${lumens(flux_lm / 2)}, a ${distance(own_distance_m, u)} del motivo.`,
  across: "De los focos de vídeo al motivo",
  at_distance: ({ distance_m }, u) => distance(distance_m, u),
  at_depth: ({ depth_m }, u) => depth(depth_m, u),
  verdicts: {
    lamps_lead: "Mandan los focos de vídeo: haga el balance de blancos a su luz",
    lights_fight: "No casan: un solo balance de blancos deja una dominante en una de las dos luces",
    daylight_leads: "Manda la luz del día: haga el balance de blancos a la luz del día",
    lamps_only: "Los focos de vídeo son la única luz: haga el balance de blancos a su luz",
    daylight_only: "La luz del día es la única luz",
  },
  own: ({ own_distance_m, ...dive }, u) =>
    `Los focos de vídeo: a ${distance(own_distance_m, u)} del motivo, ${between(dive.min_depth_m, dive.max_depth_m, u)} de profundidad`,
  ways: ({ depth_m }, u) => `Soluciones a ${depth(depth_m, u)}, la mejor primero`,
  way: (way, u) => textOf(waysOut, way, u),
  cautions: [cautions.lamps_not_into_eyes, cautions.lamps_in_water_only, cautions.closer_under_control].join(
    " ",
  ),
  description: ({ end_depth_m, end_distance_m, verdict, depth_m, own_distance_m, ways_out }, u) =>
    [
      `Un mapa de qué luz manda, de la superficie a ${depth(end_depth_m, u)}, con los focos de vídeo a un máximo de ${distance(end_distance_m, u)} del motivo.`,
      `A ${depth(depth_m, u)}, con los focos de vídeo a ${distance(own_distance_m, u)}: ${VERDICTS[verdict]}.`,
      ...ways_out.slice(0, 1).map((way) => textOf(waysOut, way, u)),
    ].join(" "),
};

const VERDICTS = {
  lamps_lead: "mandan los focos de vídeo",
  lights_fight: "las dos luces no casan",
  daylight_leads: "manda la luz del día",
  lamps_only: "los focos de vídeo son la única luz",
  daylight_only: "la luz del día es la única luz",
} as const;
