/** Dives from a seed, as somebody could plan them: each way to tell the water, with lights, filters and kit as they come. */
import { Seeded } from "../golden/seeded.js";

type Part = Record<string, unknown>;

const WATERS: readonly ((seeded: Seeded) => Part)[] = [
  (s) => ({ water_type: s.of(["I", "IA", "IB", "II", "III", "1C", "3C", "5C", "7C"]) }),
  (s) => ({ visibility_m: s.between(15, 40), water_hue: "blue" }),
  (s) => ({ visibility_m: s.between(8, 20), water_hue: "blue_green" }),
  (s) => ({ visibility_m: s.between(3, 12), water_hue: "green" }),
  (s) => ({ secchi_depth_m: s.between(10, 35), water_hue: "blue" }),
  (s) => ({ chlorophyll_mg_m3: s.times(0.05, 5) }),
];

function depths(s: Seeded): Part {
  const top = s.of([s.between(0.5, 3), s.between(3, 8), s.between(8, 25)]);
  if (s.chance(0.2)) return { depth_m: top };
  return { min_depth_m: top, max_depth_m: Number((top + s.times(1, 22)).toFixed(1)) };
}

const camera = (s: Seeded): Part => ({
  ...s.of([{}, {}, { f_number: 2.8 }, { f_number: 5.6 }, { iso: 400 }, { min_iso: 200, max_iso: 3200 }]),
  ...s.of([{}, { frame_rate_fps: 50 }, { frame_rate_fps: 60 }]),
  ...(s.chance(0.2) ? { balance_tolerance_delta_e00: s.of([2, 4, 12]) } : {}),
});

const lamps = (s: Seeded): Part => ({
  lamps: [
    {
      flux_lm: s.times(800, 20000),
      count: s.of([1, 2]),
      distance_m: s.times(0.3, 2),
      ...(s.chance(0.3) ? { filter_kind: s.of(["blue", "green"]), filter_density: s.between(0.3, 1.2) } : {}),
    },
  ],
});

const kit = (s: Seeded): Part => ({
  kit: [
    { id: "red-1", item: "lens_filter", filter_kind: "red", filter_density: s.between(0.3, 1.3) },
    { id: "grey-1", item: "lens_filter", filter_kind: "neutral", filter_density: s.of([0.6, 0.9, 1.2]) },
    {
      id: "lamp-1",
      item: "lamp_filter",
      filter_kind: s.of(["blue", "green"]),
      filter_density: s.between(0.3, 1.2),
    },
    { id: "light-1", item: "lamp" },
  ].filter(() => s.chance(0.7)),
});

/** @param index 0, 1, 2, ...: the place in the series */
export function seededDive(index: number): Part {
  const s = new Seeded(90_000 + index);
  const water = WATERS[index % WATERS.length];
  const night = s.chance(0.12);
  return {
    ...water?.(s),
    ...(night ? { daylight_basis: "none" } : { sun_elevation_deg: s.between(12, 85) }),
    ...depths(s),
    ...camera(s),
    ...(s.chance(0.4) ? { subject_distance_m: s.times(0.4, 3) } : {}),
    ...(night || s.chance(0.35) ? lamps(s) : {}),
    ...(s.chance(0.2)
      ? { filter_kind: s.of(["red", "magenta", "neutral"]), filter_density: s.between(0.3, 1.5) }
      : {}),
    ...(s.chance(0.3) ? { filter_change_underwater: s.of(["flip", "clip_on"]) } : {}),
    ...(s.chance(0.2) ? kit(s) : {}),
  };
}
