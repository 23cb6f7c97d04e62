// What the description says of a scene in words, not in its schema: which fields go together. A generated scene is
// made to keep it, so that it can be asserted to be taken.
import { allSceneRules, mountingInSceneNames } from "../../packages/contract/src/index.js";
import type { Scene } from "./arbitrary.js";

export const waters = [
  "water_type",
  "chlorophyll_mg_m3",
  "secchi_depth_m",
  "visibility_m",
  "kd_samples",
  "card_samples",
];
const places = ["latitude_deg", "longitude_deg", "time", "local_time", "time_zone"];

function drop(scene: Scene, ...names: string[]): void {
  for (const name of names) delete scene[name];
}

/** @param pick decides where several ways are open */
export function compatible(generated: Scene, pick: number): Scene {
  const scene = structuredClone(generated);
  water(scene, pick);
  daylight(scene, pick);
  depth(scene);
  view(scene);
  overhead(scene);
  bottom(scene);
  limits(scene, "iso", "min_iso", "max_iso");
  limits(scene, "f_number", "min_f_number", "max_f_number");
  balance(scene);
  shutter(scene);
  recordingCurve(scene);
  sensor(scene);
  lensFilter(scene);
  lamps(scene);
  kit(scene);
  mounting(scene, pick);
  drop(scene, "expect_model_version");
  others(scene);
  return scene;
}

/** What a filter is mounted on is told as a whole, or not at all. */
function mounting(scene: Scene, pick: number): void {
  const given = mountingInSceneNames.filter((name) => scene[name] !== undefined);
  if (given.length === 0) return;
  if (pick % 2 === 0) {
    drop(scene, ...given);
    return;
  }
  scene["port_kind"] ??= "flat";
  scene["lens_kind"] ??= "wide";
  if (scene["port_kind"] !== "dome") drop(scene, "dome_radius_mm");
  // A field, or a focal length with a format: all three at once contradict each other soon.
  if (scene["field_of_view_deg"] !== undefined || scene["focal_length_mm"] === undefined) {
    drop(scene, "focal_length_mm", "sensor_diagonal_mm");
    scene["field_of_view_deg"] ??= 90;
  } else scene["sensor_diagonal_mm"] ??= 43.3;
  if ((scene["rear_opening_width_mm"] ?? scene["rear_opening_height_mm"]) !== undefined) {
    scene["rear_opening_width_mm"] ??= 30;
    scene["rear_opening_height_mm"] ??= 24;
  }
  for (const [index, ring] of ((scene["rings"] ?? []) as Scene[]).entries()) {
    ring["id"] = `${index} ${[...String(ring["id"])].slice(0, 60).join("")}`;
  }
}

/** A sheet that covers its opening, with room for tape: the contract's least, by hand. @param kept the field that stays as it is */
export function overOpening(body: Scene, kept = ""): Scene {
  for (const side of ["width", "height"]) {
    const [sheet, opening] = [body[`sheet_${side}_mm`], body[`opening_${side}_mm`]];
    if (typeof sheet !== "number" || typeof opening !== "number") continue;
    if (kept === `sheet_${side}_mm`) {
      body[`opening_${side}_mm`] = Math.min(opening, sheet - 2);
      continue;
    }
    body[`opening_${side}_mm`] = Math.min(opening, 118);
    body[`sheet_${side}_mm`] = Math.max(sheet, Math.min(opening, 118) + 2);
  }
  return body;
}

/** A rule that has no line of its own here: what it refuses is left out, however often that makes another one refuse. */
function others(scene: Scene): void {
  for (let round = 0; round < 4; round++) {
    const found = allSceneRules.flatMap((rule) => rule.violations(scene));
    drop(scene, ...found.flatMap(({ pointer }) => pointer.split("/")[1] ?? []));
  }
}

function water(scene: Scene, pick: number): void {
  const given = waters.filter((name) => scene[name] !== undefined);
  const kept = given[pick % Math.max(1, given.length)] ?? "water_type";
  scene["water_type"] ??= "IB";
  drop(scene, ...waters.filter((name) => name !== kept));
  if (kept === "secchi_depth_m" || kept === "visibility_m") scene["water_hue"] ??= "blue";
  else drop(scene, "water_hue");
  if (kept === "card_samples") scene["transfer_curve"] ??= "srgb";
  else drop(scene, "transfer_curve", "locked_exposure", "locked_balance");
  rising(scene, "kd_samples");
  const cards = scene["card_samples"] as Scene[] | undefined;
  for (const card of cards ?? []) {
    whole(card, "iso", "shutter_s", "f_number");
    whole(card, "red_gain", "green_gain", "blue_gain");
  }
}

function whole(card: Scene, ...names: string[]): void {
  if (names.some((name) => card[name] === undefined)) drop(card, ...names);
}

function daylight(scene: Scene, pick: number): void {
  const basis = ["sun", "sun", "none", "place_time"][pick % 4];
  if (scene["daylight_basis"] !== undefined || basis !== "sun") scene["daylight_basis"] = basis;
  if (basis !== "sun") drop(scene, "sun_elevation_deg");
  if (basis !== "place_time") {
    drop(scene, ...places);
    return;
  }
  scene["latitude_deg"] ??= -47.3;
  scene["longitude_deg"] ??= -128.4;
  for (const name of ["time", "local_time"]) {
    // A day that every month has.
    if (scene[name] !== undefined) scene[name] = String(scene[name]).replace(/-(29|30|31)T/, "-28T");
  }
  if (scene["local_time"] !== undefined && scene["time"] === undefined) scene["time_zone"] ??= "Etc/GMT+9";
  else {
    drop(scene, "local_time", "time_zone");
    scene["time"] ??= "2026-03-10T10:15:00-09:00";
  }
}

function depth(scene: Scene): void {
  const { min_depth_m: min, max_depth_m: max } = scene;
  if (scene["depth_m"] === undefined && min === undefined && max === undefined) scene["depth_m"] = 10;
  if (scene["depth_m"] !== undefined) drop(scene, "min_depth_m", "max_depth_m");
  else {
    const ends = [Number(min ?? max), Number(max ?? min)].sort((a, b) => a - b);
    [scene["min_depth_m"], scene["max_depth_m"]] = ends;
  }
}

function view(scene: Scene): void {
  if (scene["daylight_basis"] !== "place_time") drop(scene, "camera_heading_deg");
  if (scene["camera_heading_deg"] !== undefined) drop(scene, "sun_side");
}

/** An opening and ice go with what lies over the diver; a cave has no daylight. */
function overhead(scene: Scene): void {
  const isIce = scene["ice_thickness_m"] !== undefined || scene["snow_thickness_m"] !== undefined;
  if (isIce) {
    scene["overhead"] = "ice";
    drop(scene, "daylight_open_share");
  } else if (scene["daylight_open_share"] !== undefined) {
    if (!["overhang", "cavern", "wreck"].includes(String(scene["overhead"]))) scene["overhead"] = "cavern";
  } else if (scene["overhead"] === "cave" && scene["daylight_basis"] !== "none") drop(scene, "overhead");
  if (scene["wanted_lead_distance_m"] !== undefined) scene["wanted_lead_stops"] ??= 3;
}

function bottom(scene: Scene): void {
  rising(scene, "bottom_reflectance");
  if (scene["bottom_reflectance"] !== undefined) drop(scene, "bottom");
  if (scene["bottom"] === "none") drop(scene, "bottom_depth_m");
  if (scene["bottom_depth_m"] === undefined) return;
  const deepest_m = Number(scene["max_depth_m"] ?? scene["depth_m"]);
  scene["bottom_depth_m"] = Math.max(deepest_m, Number(scene["bottom_depth_m"]));
}

/** Puts the limits in order and the value between them. */
function limits(scene: Scene, value: string, min: string, max: string): void {
  const given = [value, min, max].map((name) => scene[name]).filter((one) => typeof one === "number");
  if (given.length === 0) return;
  if (scene[value] === undefined && (scene[min] === undefined || scene[max] === undefined))
    drop(scene, min, max);
  else {
    scene[min] = Math.min(...given);
    scene[max] = Math.max(...given);
  }
}

function balance(scene: Scene): void {
  const [min, max] = ["white_balance_min_cct_K", "white_balance_max_cct_K"] as const;
  const ends = [Number(scene[min] ?? 2500), Number(scene[max] ?? 10000)].sort((a, b) => a - b);
  if (ends[0] === ends[1]) drop(scene, min, max);
  else [scene[min], scene[max]] = ends;
}

function shutter(scene: Scene): void {
  const rate = Number(scene["frame_rate_fps"] ?? 25);
  if (scene["shutter_s"] !== undefined) {
    drop(scene, "shutter_angle_deg");
    if (Number(scene["shutter_s"]) > 1 / rate) drop(scene, "frame_rate_fps");
  } else if (Number(scene["shutter_angle_deg"] ?? 180) / 360 / rate < 1e-5) {
    drop(scene, "frame_rate_fps", "shutter_angle_deg");
  }
}

function lensFilter(scene: Scene): void {
  oneFilter(scene);
  if (scene["filter_density"] !== undefined) drop(scene, "filter_stops");
  if ((scene["filter_density"] ?? scene["filter_stops"]) === undefined) drop(scene, "filter_kind");
  else scene["filter_kind"] ??= "red";
}

/** Leaves a filter one way to be described: by pictures, by its curve, or by its kind. */
function oneFilter(owner: Scene): void {
  rising(owner, "filter_transmittance");
  samples(owner);
  if (owner["filter_samples"] !== undefined) drop(owner, "filter_transmittance");
  if ((owner["filter_samples"] ?? owner["filter_transmittance"]) !== undefined)
    drop(owner, "filter_kind", "filter_density", "filter_stops");
}

/** Pictures of a card with a filter are no brighter than those without it, and all of one filter alike. */
function samples(owner: Scene): void {
  const [first] = (owner["filter_samples"] ?? []) as Scene[];
  if (first === undefined) return;
  for (const colour of ["red", "green", "blue"]) {
    const [without, filtered] = [Number(first[`${colour}_without`]), Number(first[`${colour}_with`])];
    if (filtered <= without) continue;
    if (filtered === 1) first[`${colour}_without`] = 1;
    else first[`${colour}_with`] = without;
  }
  owner["filter_samples"] = (owner["filter_samples"] as Scene[]).map(() => ({ ...first }));
}

/** Points of a recording curve rise, from no light to the brightest. */
/** A camera as cameras are; only its first sample, where blue begins, is anyhow. */
function sensor(scene: Scene): void {
  const [first] = (scene["sensor_samples"] ?? []) as Scene[];
  if (
    first === undefined ||
    allSceneRules.every((rule) =>
      rule.violations(scene).every(({ pointer }) => !pointer.startsWith("/sensor_samples")),
    )
  )
    return;
  const others = [400, 460, 530, 600, 700].map((wavelength_nm) => ({
    wavelength_nm,
    red: wavelength_nm === 600 ? 0.75 : 0.03,
    green: wavelength_nm === 530 ? 1 : 0.05,
    blue: wavelength_nm === 460 ? 0.85 : 0.02,
  }));
  scene["sensor_samples"] = [{ ...first, wavelength_nm: 380 }, ...others];
}

function recordingCurve(scene: Scene): void {
  const points = scene["recording_curve_points"] as Scene[] | undefined;
  if (points === undefined) return;
  drop(scene, "recording_curve");
  const shares = (name: string) => points.map((point) => Number(point[name])).sort((a, b) => a - b);
  const [lights, codes] = [shares("light_share"), shares("code_share")];
  const rises = (values: number[], by: number) =>
    values.every(
      (value, n) => n === 0 || (value > (values[n - 1] ?? 1) && value - (values[n - 1] ?? 1) >= by),
    );
  const last = points.length - 1;
  const isRight = points.length > 1 && rises(lights, 0) && rises(codes, 0.001);
  scene["recording_curve_points"] = points.map((_, n) => ({
    light_share: n === 0 ? 0 : n === last ? 1 : isRight ? lights[n] : n / last,
    code_share: isRight ? codes[n] : n / Math.max(1, last),
  }));
}

function pair(owner: Scene, prefix: string): void {
  const [kind, density] = [`${prefix}kind`, `${prefix}density`];
  if (owner[kind] === undefined || owner[density] === undefined) drop(owner, kind, density);
}

function lamps(scene: Scene): void {
  const flat = Object.keys(scene).filter((name) => name.startsWith("lamp_"));
  if (scene["lamps"] !== undefined) drop(scene, ...flat);
  else if (flat.length > 0) {
    scene["lamp_flux_lm"] ??= 4000;
    scene["lamp_distance_m"] ??= 0.8;
    if (scene["lamp_cct_K"] !== undefined) drop(scene, "lamp_led");
    pair(scene, "lamp_filter_");
  }
  for (const lamp of (scene["lamps"] ?? []) as Scene[]) {
    if (lamp["cct_K"] !== undefined) drop(lamp, "led");
    pair(lamp, "filter_");
  }
}

function kit(scene: Scene): void {
  for (const [index, item] of ((scene["kit"] ?? []) as Scene[]).entries()) {
    item["id"] = `${index} ${[...String(item["id"])].slice(0, 60).join("")}`;
    oneFilter(item);
    if (item["item"] === "lamp")
      drop(item, "filter_transmittance", "filter_samples", "filter_kind", "filter_density", "filter_stops");
    else if ((item["filter_transmittance"] ?? item["filter_samples"]) === undefined) {
      item["filter_kind"] ??= "red";
      if (item["filter_stops"] === undefined) item["filter_density"] ??= 0.6;
      else drop(item, "filter_density");
    }
  }
}

/** Puts samples in the order of their wavelengths, each once, and at least two. */
function rising(owner: Scene, name: string): void {
  const samples = owner[name] as Scene[] | undefined;
  if (samples === undefined) return;
  const byWavelength = new Map(samples.map((sample) => [Number(sample["wavelength_nm"]), sample]));
  const sorted = [...byWavelength.entries()].sort(([a], [b]) => a - b).map(([, sample]) => sample);
  const [first] = sorted;
  if (sorted.length === 1 && first !== undefined) {
    const wavelength = Number(first["wavelength_nm"]);
    sorted.push({ ...first, wavelength_nm: wavelength < 700 ? wavelength + 50 : wavelength });
    if (wavelength >= 700) first["wavelength_nm"] = wavelength - 50;
    if (wavelength >= 700) sorted[0] = { ...first };
  }
  owner[name] = sorted;
}
