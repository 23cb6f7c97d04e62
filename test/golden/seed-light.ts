/** Scenes of light as callers send them, from a seed: a dive that somebody could plan, in every way that a scene can be told. */
import { filterKinds, ledNames, waterHues, waterTypes } from "../../packages/contract/src/scene/values.js";
import { Seeded } from "./seeded.js";

type Part = Record<string, unknown>;

/** Each way to say a thing is taken in turn, so that none is left to chance. */
const WATERS = [named, byDisc, measured, byCard, bySight, byPlankton, named] as const;
const SKIES = [bySun, bySun, bySun, night, byClock, bySun] as const;

/** @param index 0, 1, 2, ...: the place in the series */
export function seededLight(index: number): Part {
  const seeded = new Seeded(1000 + index);
  const water = WATERS[index % WATERS.length] ?? named;
  const sky = SKIES[index % SKIES.length] ?? bySun;
  const dark = sky === night;
  return {
    ...water(seeded),
    ...sky(seeded),
    ...depths(seeded),
    ...(seeded.chance(0.5) ? { subject_distance_m: seeded.times(0.3, 4) } : {}),
    ...(seeded.chance(0.5) ? { subject_facing: seeded.of(["up", "camera", "sun"]) } : {}),
    ...camera(seeded),
    ...(dark || seeded.chance(0.4) ? lamps(seeded) : {}),
    ...(seeded.chance(0.45) ? lensFilter(seeded) : {}),
    ...(seeded.chance(0.3) ? { filter_change_underwater: seeded.of(["flip", "clip_on"]) } : {}),
    ...(seeded.chance(0.3) ? { kit: kit(seeded) } : {}),
    // Every third is graded by a profile, so that this finish is held as well as the camera's own picture.
    ...(index % 3 === 0 ? { finish: "matched" } : {}),
  };
}

function named(seeded: Seeded): Part {
  return { water_type: seeded.of(waterTypes) };
}

/** How far one sees in water of each colour, more or less: some scenes contradict themselves, and are told so. */
const SEEN_m = { blue: [14, 45], blue_green: [6, 24], green: [2, 18], brown: [0.6, 5] } as const;

function seen(seeded: Seeded): [number, Part] {
  const water_hue = seeded.of(waterHues);
  const [least, most] = SEEN_m[water_hue];
  return [seeded.times(least, most), { water_hue }];
}

function byDisc(seeded: Seeded): Part {
  const [secchi_depth_m, hue] = seen(seeded);
  return { secchi_depth_m, ...hue };
}

function bySight(seeded: Seeded): Part {
  const [visibility_m, hue] = seen(seeded);
  return { visibility_m, ...hue };
}

function byPlankton(seeded: Seeded): Part {
  return { chlorophyll_mg_m3: seeded.times(0.03, 10) };
}

function measured(seeded: Seeded): Part {
  const clearest = seeded.times(0.03, 0.3);
  const pure = { 450: 0, 500: 0, 550: 0.02, 600: 0.2, 650: 0.32 };
  const kd = Object.entries(pure).map(([wavelength, per_m]) => ({
    wavelength_nm: Number(wavelength),
    kd_per_m: Number((clearest * seeded.between(1, 1.6) + per_m).toFixed(3)),
  }));
  return { kd_samples: kd };
}

/** A card that darkens by its channels' attenuation on the way down, stored straight or as sRGB does. */
function byCard(seeded: Seeded): Part {
  const curve = seeded.of(["linear", "srgb"] as const);
  const k = {
    red: seeded.between(0.28, 0.4),
    green: seeded.between(0.06, 0.14),
    blue: seeded.between(0.05, 0.2),
  };
  const stored = (light: number) =>
    curve === "linear" ? light : light < 0.0031308 ? 12.92 * light : 1.055 * light ** (1 / 2.4) - 0.055;
  // What is left of red below a few metres is the part that water takes less of.
  const fading_m = (name: string, depth_m: number) => (name === "red" ? 1.4 * depth_m ** 0.75 : depth_m);
  const at = (depth_m: number) => ({
    depth_m,
    ...Object.fromEntries(
      Object.entries(k).map(([name, per_m]) => [
        name,
        Number(stored(0.5 * Math.exp(-per_m * fading_m(name, depth_m))).toFixed(4)),
      ]),
    ),
  });
  const locked = seeded.chance(0.6);
  const depths = [2, 5, 8].slice(0, seeded.chance(0.5) ? 3 : 2);
  return {
    card_samples: depths.map((depth_m) => ({
      ...at(depth_m),
      ...(locked
        ? {}
        : { iso: 400, shutter_s: 0.02, f_number: 5.6, red_gain: 2, green_gain: 1, blue_gain: 1.4 }),
    })),
    transfer_curve: curve,
    ...(locked ? { locked_exposure: true, locked_balance: true } : {}),
  };
}

function bySun(seeded: Seeded): Part {
  return {
    ...(seeded.chance(0.85) ? { sun_elevation_deg: seeded.between(8, 88) } : {}),
    ...weather(seeded),
  };
}

function night(): Part {
  return { daylight_basis: "none" };
}

function byClock(seeded: Seeded): Part {
  const place = seeded.of([
    // Open ocean, far from any coast; signs of Etc are turned (IANA).
    { latitude_deg: 27.8, longitude_deg: -150, time_zone: "Etc/GMT+10", offset: "-10:00" },
    { latitude_deg: 36, longitude_deg: -45, time_zone: "Etc/GMT+3", offset: "-03:00" },
    { latitude_deg: -8.4, longitude_deg: -115, time_zone: "Etc/GMT+8", offset: "-08:00" },
    { latitude_deg: 61, longitude_deg: -35, time_zone: "Etc/GMT+2", offset: "-02:00" },
  ]);
  const { time_zone, offset, ...where } = place;
  const day = seeded.of(["2026-03-10", "2026-06-20", "2026-12-02"]);
  const clock = seeded.of(["07:30", "10:15", "12:00", "15:40", "18:50"]);
  return {
    daylight_basis: "place_time",
    ...where,
    ...(seeded.chance(0.7)
      ? { local_time: `${day}T${clock}`, time_zone }
      : { time: `${day}T${clock}:00${offset}` }),
    ...weather(seeded),
  };
}

function weather(seeded: Seeded): Part {
  return {
    ...(seeded.chance(0.5) ? { cloud_oktas: Math.floor(seeded.between(0, 8.99)) } : {}),
    ...(seeded.chance(0.4) ? { wind_speed_m_s: seeded.between(0, 15) } : {}),
  };
}

function depths(seeded: Seeded): Part {
  const shallow = seeded.times(0.5, 40);
  if (seeded.chance(0.45)) return { depth_m: shallow };
  return { min_depth_m: shallow, max_depth_m: Number((shallow + seeded.times(0.4, 25)).toFixed(2)) };
}

function camera(seeded: Seeded): Part {
  const iso = seeded.of([
    {},
    { min_iso: 200, max_iso: 3200 },
    { min_iso: 100, max_iso: 800 },
    { iso: 400 },
    { min_iso: 800, max_iso: 51200 },
  ]);
  const aperture = seeded.of([
    {},
    { min_f_number: 2.8, max_f_number: 16 },
    { f_number: 2.8 },
    { min_f_number: 4, max_f_number: 8 },
  ]);
  const shutter = seeded.of([
    {},
    { shutter_s: 0.02 },
    { frame_rate_fps: 50, shutter_angle_deg: 180 },
    { frame_rate_fps: 24 },
  ]);
  return {
    ...iso,
    ...aperture,
    ...shutter,
    ...(seeded.chance(0.5)
      ? { bits: seeded.of([8, 10, 12]), recording_curve: seeded.of(["rec709", "log", "linear"]) }
      : {}),
    ...(seeded.chance(0.3)
      ? {
          white_balance_max_cct_K: seeded.of([7500, 15000, 20000]),
          white_balance_max_duv: seeded.of([0.01, 0.05, 0.1]),
        }
      : {}),
    ...(seeded.chance(0.3) ? { balance_tolerance_delta_e00: seeded.of([2, 4, 12]) } : {}),
  };
}

function lamps(seeded: Seeded): Part {
  const lamp = () => ({
    flux_lm: seeded.times(400, 30000),
    ...(seeded.chance(0.6) ? { count: seeded.of([1, 2, 4]) } : {}),
    ...(seeded.chance(0.6)
      ? { beam_angle_deg: seeded.of([15, 60, 100, 120]), beam_angle_medium: seeded.of(["air", "water"]) }
      : {}),
    ...(seeded.chance(0.5) ? { led: seeded.of(ledNames) } : { cct_K: seeded.of([3200, 5000, 5600, 7500]) }),
    distance_m: seeded.times(0.3, 3),
    ...(seeded.chance(0.3)
      ? { filter_kind: seeded.of(["blue", "green"]), filter_density: seeded.between(0.2, 1.2) }
      : {}),
  });
  return { lamps: seeded.chance(0.25) ? [lamp(), lamp()] : [lamp()] };
}

function curve(seeded: Seeded): Part {
  const low = seeded.between(0.05, 0.6);
  const at = (wavelength_nm: number, transmittance: number) => ({ wavelength_nm, transmittance });
  return {
    filter_transmittance: [
      at(420, Number((low * seeded.between(0.6, 1.5)).toFixed(3))),
      at(540, low),
      at(600, Number(Math.min(0.9, low * 2).toFixed(3))),
      at(680, 0.9),
    ],
  };
}

function lensFilter(seeded: Seeded): Part {
  if (seeded.chance(0.25)) return curve(seeded);
  return {
    filter_kind: seeded.of(["red", "red", "magenta", ...filterKinds]),
    filter_density: seeded.between(0.15, 1.2),
  };
}

function kit(seeded: Seeded): Part[] {
  const items: Part[] = [];
  for (const kind of ["red", "magenta"] as const) {
    if (seeded.chance(0.6)) {
      items.push({
        id: `${kind}-1`,
        item: "lens_filter",
        filter_kind: kind,
        filter_density: seeded.between(0.2, 1),
      });
    }
  }
  if (seeded.chance(0.4)) items.push({ id: "curve-1", item: "lens_filter", ...curve(seeded) });
  if (seeded.chance(0.5)) {
    items.push({
      id: "lamp-1",
      item: "lamp_filter",
      filter_kind: seeded.of(["blue", "green"]),
      filter_density: seeded.between(0.3, 1),
    });
  }
  if (seeded.chance(0.5)) items.push({ id: "lamps-1", item: "lamp" });
  return items;
}
