// A trip of the demo world: three days of the Quillbarrow Packet, two dives a day.
import type { Piece, TripDive, TripGuest, TripPlan } from "./plan.js";

const mounted = {
  filter_thickness_mm: 5,
  filter_material: "glass",
  sheet_thickness_mm: 0.1,
  sheet_refractive_index: 1.5,
} as const;

export const piece = (id: string, own: Partial<Piece> = {}): Piece => ({
  id,
  item: "lens_filter",
  filter_kind: "red",
  filter_density: 0.9,
  filter_thread_mm: 67,
  ...mounted,
  ...own,
});

export const dive = (id: string, local_time: string, own: Partial<TripDive["scene"]> = {}): TripDive => ({
  id,
  local_time,
  time_zone: "Etc/GMT+9",
  isSunAssumed: false,
  scene: {
    visibility_m: 25,
    water_hue: "blue",
    daylight_basis: "place_time",
    latitude_deg: -47.3,
    longitude_deg: -128.4,
    local_time,
    time_zone: "Etc/GMT+9",
    cloud_oktas: 2,
    wind_speed_m_s: 4,
    min_depth_m: 5,
    max_depth_m: 18,
    subject_distance_m: 1,
    subject_facing: "camera",
    ...own,
  },
});

const exposure = {
  min_iso: 100,
  max_iso: 6400,
  min_f_number: 2.8,
  max_f_number: 22,
  shutter_s: 0.02,
  bits: 8,
  white_balance_min_cct_K: 2500,
  white_balance_max_cct_K: 10_000,
  white_balance_max_duv: 0.03,
};

const lens = {
  port_kind: "flat",
  lens_kind: "standard",
  field_of_view_deg: 62,
  wet_lens: "none",
  zoom_travel_mm: 0,
  lens_interchangeable: false,
  rear_fixing: "slot",
} as const;

export const guest = (id: string, own: Partial<TripGuest> = {}): TripGuest => ({
  id,
  camera: { ...exposure },
  mount: { ...lens, port_thread_mm: 67 },
  rings: [],
  kit: [],
  ...own,
});

/** The same with a lens of another thread inside the port. */
export const narrow = { ...lens, lens_thread_mm: 52 } as const;

export const trip = (own: Partial<TripPlan> = {}): TripPlan => ({
  dives: [dive("d1", "2027-01-16T09:30")],
  guests: [guest("g1"), guest("g2")],
  shelf: [{ ...piece("red-67"), quantity: 1 }],
  rings: [],
  ...own,
});
