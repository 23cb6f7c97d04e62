import { readDescription } from "../generate/description.mjs";
import { methodsOf } from "../generate/operations.mjs";

const camera = { min_iso: 200, max_iso: 3200, min_f_number: 2.8, max_f_number: 16, shutter_s: 0.02 };
const lamps = [
  { flux_lm: 4000, count: 2, beam_angle_deg: 100, beam_angle_medium: "water", cct_K: 5600, distance_m: 0.8 },
];

/** Scenes beside the description's examples: lamps as a list, the edges of a choice, a place and a time. */
const scenes = [
  { water_type: "IB", daylight_basis: "none", depth_m: 15, lamps, ...camera },
  { water_type: "IB", sun_elevation_deg: 50, depth_m: 12, lamps, ...camera },
  { water_type: "IB", sun_elevation_deg: 40, depth_m: 1.5, ...camera },
  { water_type: "5C", sun_elevation_deg: 15, depth_m: 14, ...camera, max_iso: 800 },
  {
    visibility_m: 25,
    water_hue: "blue",
    depth_m: 12,
    latitude_deg: 27.8,
    longitude_deg: 34.3,
    local_time: "2026-06-10T10:15",
    time_zone: "Africa/Cairo",
  },
];

/**
 * What every runtime is asked: each calculation's own examples, and some scenes more.
 * @returns {{ group: string, name: string, body: unknown }[]}
 */
export function whatIsAsked() {
  const methods = methodsOf(readDescription());
  return methods.flatMap(({ group, name, body, pathParameters, described }) => {
    if (group === "service" || pathParameters.length > 0) return [];
    if (body === undefined) return [{ group, name, body }];
    const content = Object.values(described.requestBody?.content ?? {})[0];
    const examples = Object.values(content?.examples ?? {}).map(({ value }) => value);
    const bodies = [...examples, ...(body === "Scene" ? scenes : [])];
    return bodies.map((value) => ({ group, name, body: value }));
  });
}
