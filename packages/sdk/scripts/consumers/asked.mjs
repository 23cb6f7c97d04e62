import { readDescription } from "../generate/description.mjs";
import { methodsOf } from "../generate/operations.mjs";

const camera = { min_iso: 200, max_iso: 3200, min_f_number: 2.8, max_f_number: 16, shutter_s: 0.02 };
const lamps = [
  { flux_lm: 4000, count: 2, beam_angle_deg: 100, beam_angle_medium: "water", cct_K: 5600, distance_m: 0.8 },
];

/** A scene whose sun follows from where and when. */
const at = (
  /** @type {number} */ latitude_deg,
  /** @type {number} */ longitude_deg,
  /** @type {object} */ when,
) => ({
  visibility_m: 25,
  water_hue: "blue",
  depth_m: 12,
  latitude_deg,
  longitude_deg,
  ...when,
});

/** Scenes beside the description's examples: lamps as a list, the edges of a choice, measured water. */
const scenes = [
  { water_type: "IB", daylight_basis: "none", depth_m: 15, lamps, ...camera },
  { water_type: "IB", sun_elevation_deg: 50, depth_m: 12, lamps, ...camera },
  { water_type: "IB", sun_elevation_deg: 40, depth_m: 1.5, ...camera },
  { water_type: "5C", sun_elevation_deg: 15, depth_m: 14, ...camera, max_iso: 800 },
  { chlorophyll_mg_m3: 0.4, sun_elevation_deg: 33, cloud_oktas: 5, min_depth_m: 4, max_depth_m: 22 },
  at(-47.3, -128.4, { local_time: "2027-01-10T10:15", time_zone: "Etc/GMT+9" }),
];

/** Suns over open ocean from pole to pole and over the calendar, for a calculation that shows them in many of its numbers. */
const suns = [
  at(31.6, -148.2, { local_time: "2026-12-21T14:00", time_zone: "Etc/GMT+10" }),
  at(-8.7, -118.3, { local_time: "2026-03-20T09:05:30", time_zone: "Etc/GMT+8" }),
  at(-29.5, -118.8, { time: "2026-09-23T21:13:07Z" }),
  at(60.1, -25.5, { time: "2026-06-21T23:45:00+13:45" }),
  at(85.2, 15.6, { time: "2026-06-21T00:05:00Z" }),
  at(0, 180, { time: "1925-11-03T23:30:00.5Z" }),
  at(20.4, -127.1, { time: "2093-05-17T16:00:00Z" }),
  at(-54.8, -98.3, { local_time: "2026-11-01T12:00", time_zone: "Etc/GMT+7" }),
  // Night, twilight, and a time that no clock of a real zone shows (directive 2000/84/EC; IANA): answers without a sun, and problems.
  at(60.1, -25.5, { time: "2026-12-21T00:00:00Z" }),
  at(60.1, -25.5, { time: "2026-12-21T11:30:00Z" }),
  at(-47.3, -128.4, { local_time: "2026-03-29T02:30", time_zone: "Europe/Berlin" }),
];

const wrong = [
  {},
  { water_typ: "IB", depth_m: 500, iso: 0.5 },
  { water_type: "IB", min_depth_m: 9, max_depth_m: 5 },
];

/**
 * What every runtime is asked: each calculation's own examples, and some scenes more; of reference data all.
 * @returns {{ group: string, name: string, path: string, body: unknown }[]}
 */
export function whatIsAsked() {
  const methods = methodsOf(readDescription());
  return methods.flatMap(({ group, name, path, body, described }) => {
    if (group !== "calculations" && group !== "reference") return [];
    if (body === undefined) return [{ group, name, path, body }];
    const content = Object.values(described.requestBody?.content ?? {})[0];
    const examples = Object.values(content?.examples ?? {}).map(({ value }) => value);
    const more = body === "Scene" ? [...scenes, ...(name === "attenuation" ? suns : []), ...wrong] : wrong;
    return [...examples, ...more].map((value) => ({ group, name, path, body: value }));
  });
}
