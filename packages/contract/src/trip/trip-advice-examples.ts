const place = { latitude_deg: -47.3, longitude_deg: -128.4 } as const;
const stair = {
  ...place,
  visibility_m: 25,
  water_hue: "blue",
  min_depth_m: 5,
  max_depth_m: 18,
  cloud_oktas: 2,
} as const;
const mole = {
  ...place,
  visibility_m: 12,
  water_hue: "blue_green",
  min_depth_m: 3,
  max_depth_m: 10,
  cloud_oktas: 4,
} as const;
const time_zone = "Etc/GMT+9";

const dives = [16, 17, 18].flatMap(
  (day) =>
    [
      {
        id: `${day} a.m.`,
        name: "Gannet Stair",
        local_time: `2027-01-${day}T09:30`,
        time_zone,
        scene: stair,
      },
      { id: `${day} p.m.`, name: "Old Mole", local_time: `2027-01-${day}T14:00`, time_zone, scene: mole },
    ] as const,
);

const systemCamera = {
  camera_class: "interchangeable",
  port_kind: "flat",
  lens_kind: "standard",
  focal_length_mm: 28,
  sensor_diagonal_mm: 28.4,
  lens_thread_mm: 52,
} as const;
const compact = {
  camera_class: "compact",
  port_kind: "flat",
  lens_kind: "standard",
  field_of_view_deg: 62,
  port_thread_mm: 67,
  port_outer_diameter_mm: 84,
} as const;
const action = {
  camera_class: "action",
  port_kind: "none",
  lens_kind: "fisheye",
  field_of_view_deg: 140,
  port_outer_diameter_mm: 45,
} as const;
const phone = {
  camera_class: "phone",
  port_kind: "flat",
  lens_kind: "wide",
  field_of_view_deg: 75,
  port_thread_mm: 67,
  port_outer_diameter_mm: 84,
} as const;

const guests = (["en", "de", "es", "fr"] as const).flatMap((language, group) =>
  [systemCamera, compact, group % 2 === 0 ? action : phone].map((camera, n) => ({
    id: `g${String(3 * group + n + 1).padStart(2, "0")}`,
    language,
    camera,
  })),
);

const shelf = [
  ...[0.6, 0.9, 1.2].map((filter_density) => ({
    id: `red ${filter_density}`,
    item: "lens_filter" as const,
    filter_kind: "red" as const,
    filter_density,
    filter_thread_mm: 67,
    quantity: 2,
  })),
  {
    id: "magenta 0.6",
    item: "lens_filter" as const,
    filter_kind: "magenta" as const,
    filter_density: 0.6,
    filter_thread_mm: 67,
    quantity: 3,
  },
  {
    id: "red frame",
    item: "lens_filter" as const,
    filter_kind: "red" as const,
    filter_density: 0.9,
    holder: "action_camera" as const,
    holder_inner_diameter_mm: 46,
    filter_clear_diameter_mm: 40,
    filter_thickness_mm: 3,
    quantity: 3,
  },
];

/** Trips to ask for. */
export const tripAdviceExamples = {
  two_guests_one_filter: {
    summary: "Two dives, three guests, and two filters to share",
    value: {
      id: "packet-2027-01",
      dives: [
        { id: "d1", name: "Gannet Stair", local_time: "2027-01-16T09:30", time_zone, scene: stair },
        {
          id: "d2",
          name: "Old Mole",
          local_time: "2027-01-16T14:00",
          time_zone,
          duration_min: 50,
          scene: mole,
        },
      ],
      guests: [
        {
          id: "g1",
          language: "de",
          camera: {
            camera_class: "interchangeable",
            port_kind: "flat",
            lens_kind: "standard",
            focal_length_mm: 28,
            sensor_diagonal_mm: 28.4,
            lens_thread_mm: 52,
          },
        },
        {
          id: "g2",
          camera: {
            camera_class: "compact",
            port_kind: "flat",
            lens_kind: "standard",
            field_of_view_deg: 62,
            port_thread_mm: 67,
          },
        },
        {
          id: "g3",
          camera: { camera_class: "action" },
          kit: [{ id: "own-red", item: "lens_filter", filter_kind: "red", filter_density: 0.9 }],
        },
      ],
      shelf: [
        {
          id: "red-67",
          item: "lens_filter",
          filter_kind: "red",
          filter_density: 0.9,
          filter_thread_mm: 67,
          quantity: 1,
        },
        {
          id: "magenta-67",
          item: "lens_filter",
          filter_kind: "magenta",
          filter_density: 0.6,
          filter_thread_mm: 67,
          quantity: 1,
        },
      ],
      rings: [{ id: "52-67", from_mm: 52, to_mm: 67, thickness_mm: 3, quantity: 2 }],
    },
  },
  three_days_twelve_guests: {
    summary: "Three days, twelve guests, and twelve filters to share",
    value: {
      id: "packet-2027-02",
      dives,
      guests,
      shelf,
      rings: [{ id: "52-67", from_mm: 52, to_mm: 67, thickness_mm: 3, quantity: 4 }],
    },
  },
} as const;
