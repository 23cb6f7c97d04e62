// Runs in every runtime: asks the service, computes offline, and gives a digest of all that was computed, so that the
// runtimes can be compared to the byte.
import { InvalidSceneError, Sunfathom, SunfathomError } from "@sunfathom/sdk";
import { OfflineSunfathom } from "@sunfathom/sdk/offline";

const camera = { min_iso: 200, max_iso: 3200, min_f_number: 2.8, max_f_number: 16, shutter_s: 0.02 };
const lamps = [
  { flux_lm: 4000, count: 2, beam_angle_deg: 100, beam_angle_medium: "water", cct_K: 5600, distance_m: 0.8 },
];
const scenes = [
  { water_type: "IB", sun_elevation_deg: 40, min_depth_m: 5, max_depth_m: 18, ...camera },
  { water_type: "3C", sun_elevation_deg: 50, min_depth_m: 4, max_depth_m: 12, ...camera },
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
 * @param {string} baseUrl
 * @param {typeof fetch} [ownFetch]
 * @returns {Promise<string>} how many answers there were, and the SHA-256 of their bytes
 */
export async function digest(baseUrl, ownFetch) {
  const online = new Sunfathom({ baseUrl, fetch: ownFetch });
  const offline = new OfflineSunfathom();
  const names = Object.getOwnPropertyNames(Object.getPrototypeOf(offline.calculations));
  const texts = [];
  for (const name of names.filter((name) => name !== "constructor")) {
    for (const scene of scenes) texts.push(JSON.stringify(await offline.calculations[name](scene)));
  }
  texts.push(JSON.stringify(await offline.reference.models()));

  const served = JSON.stringify(await online.calculations.filterChoice(scenes[0]));
  if (!texts.includes(served)) throw new Error("The service answers otherwise than the offline mode.");
  for (const client of [online, offline]) {
    const refused = await client.calculations.filterChoice({ dept_m: 5 }).catch((error) => error);
    if (!(refused instanceof InvalidSceneError && refused instanceof SunfathomError)) throw refused;
    if (!refused.errors.some(({ did_you_mean }) => did_you_mean === "depth_m"))
      throw new Error("no nearest name");
  }
  const hash = await crypto.subtle.digest("SHA-256", new TextEncoder().encode(texts.join("\n")));
  const hex = [...new Uint8Array(hash)].map((byte) => byte.toString(16).padStart(2, "0")).join("");
  return `${texts.length} answers, ${hex.slice(0, 16)}`;
}
