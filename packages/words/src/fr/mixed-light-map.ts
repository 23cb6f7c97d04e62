import type { MixedLightMapTexts } from "../picture-texts.js";
import { textOf } from "../text-of.js";
import { cautions } from "./cautions.js";
import { between, depth, distance, lumens } from "./format.js";
import { waysOut } from "./ways-out.js";

export const mixedLightMap: MixedLightMapTexts = {
  headline: ({ verdict, depth_m, own_distance_m }, u) =>
    ({
      lights_fight: `À ${depth(depth_m, u)}, les phares vidéo à ${distance(own_distance_m, u)} et la lumière du jour se contrarient`,
      lamps_lead: `À ${depth(depth_m, u)}, les phares vidéo à ${distance(own_distance_m, u)} l’emportent`,
      daylight_leads: `À ${depth(depth_m, u)}, la lumière du jour l’emporte sur les phares vidéo à ${distance(own_distance_m, u)}`,
      lamps_only: `À ${depth(depth_m, u)}, les phares vidéo sont la seule lumière`,
      daylight_only: `À ${depth(depth_m, u)}, la lumière du jour est la seule`,
    })[verdict],
  assumed: ({ flux_lm, own_distance_m }, u) =>
    `Vous n’avez pas indiqué de phares vidéo : ceci vaut pour deux de ${lumens(flux_lm / 2)}, à ${distance(own_distance_m, u)} du sujet.`,
  across: "Distance des phares vidéo au sujet",
  at_distance: ({ distance_m }, u) => distance(distance_m, u),
  at_depth: ({ depth_m }, u) => depth(depth_m, u),
  verdicts: {
    lamps_lead: "Les phares vidéo l’emportent : faites la balance des blancs à leur lumière",
    lights_fight:
      "Ils se contrarient : une seule balance des blancs laisse une dominante dans l’une des lumières",
    daylight_leads: "La lumière du jour l’emporte : faites la balance des blancs à la lumière du jour",
    lamps_only: "Les phares vidéo sont la seule lumière : faites la balance des blancs à leur lumière",
    daylight_only: "La lumière du jour est la seule",
  },
  own: ({ own_distance_m, ...dive }, u) =>
    `Les phares vidéo : à ${distance(own_distance_m, u)} du sujet, ${between(dive.min_depth_m, dive.max_depth_m, u)} de profondeur`,
  ways: ({ depth_m }, u) => `Solutions à ${depth(depth_m, u)}, la meilleure d’abord`,
  way: (way, u) => textOf(waysOut, way, u),
  cautions: [cautions.lamps_not_into_eyes, cautions.lamps_in_water_only, cautions.closer_under_control].join(
    " ",
  ),
  description: ({ end_depth_m, end_distance_m, verdict, depth_m, own_distance_m, ways_out }, u) =>
    [
      `Une carte de la lumière qui l’emporte, de la surface à ${depth(end_depth_m, u)}, avec des phares vidéo jusqu’à ${distance(end_distance_m, u)} du sujet.`,
      `À ${depth(depth_m, u)}, avec les phares vidéo à ${distance(own_distance_m, u)} : ${VERDICTS[verdict]}.`,
      ...ways_out.slice(0, 1).map((way) => textOf(waysOut, way, u)),
    ].join(" "),
};

const VERDICTS = {
  lamps_lead: "les phares vidéo l’emportent",
  lights_fight: "les deux lumières se contrarient",
  daylight_leads: "la lumière du jour l’emporte",
  lamps_only: "les phares vidéo sont la seule lumière",
  daylight_only: "la lumière du jour est la seule",
} as const;
