import { Sunfathom } from "@sunfathom/sdk";

// What callers get wrong. Above each: a part of what the compiler says of it.
const { calculations } = new Sunfathom({ baseUrl: "https://light.example.org" });
const place = { latitude_deg: -47.2, longitude_deg: -128.6 };

// says: is not assignable to parameter of type 'Scene'
calculations.filterChoice({});

// says: Property 'depth_m' is missing
calculations.filterChoice({ water_type: "IB" });

// says: Describe the water in one way
calculations.filterChoice({ water_type: "IB", visibility_m: 20, depth_m: 12 });

// says: Property 'water_hue' is missing
calculations.filterChoice({ visibility_m: 20, depth_m: 12 });

// says: Property 'max_depth_m' is missing
calculations.filterChoice({ water_type: "IB", min_depth_m: 12 });

// says: Give one depth, depth_m, or two
calculations.filterChoice({ water_type: "IB", depth_m: 12, max_depth_m: 18 });

// says: Property 'time' is missing
calculations.filterChoice({ water_type: "IB", depth_m: 12, ...place });

// says: Property 'time_zone' is missing
calculations.filterChoice({ water_type: "IB", depth_m: 12, ...place, local_time: "2026-06-10T10:00" });

// says: Give daylight in one way
calculations.filterChoice({
  water_type: "IB",
  depth_m: 12,
  sun_elevation_deg: 40,
  ...place,
  time: "2026-06-10T10:00:00Z",
});

// says: Property 'filter_density' is missing
calculations.filterChoice({ water_type: "IB", depth_m: 12, filter_kind: "red" });

// says: Property 'lamp_distance_m' is missing
calculations.mixedLight({ water_type: "IB", depth_m: 12, lamp_flux_lm: 4000 });

// says: Give the colour of a light in one way
calculations.mixedLight({
  water_type: "IB",
  depth_m: 12,
  lamps: [{ flux_lm: 4000, distance_m: 1, cct_K: 5600, led: "LED-B4" }],
});

// says: filter_density
calculations.filterChoice({
  water_type: "IB",
  depth_m: 12,
  kit: [{ id: "red", item: "lens_filter", filter_kind: "red" }],
});

// says: Property 'field_of_view_deg' is missing
calculations.filterMounting({ port_kind: "flat", lens_kind: "wide" });

// says: dome_radius_mm goes with port_kind dome
calculations.filterMounting({
  port_kind: "flat",
  lens_kind: "wide",
  field_of_view_deg: 90,
  dome_radius_mm: 100,
});

// says: Did you mean to write 'depth_m'?
calculations.filterChoice({ water_type: "IB", dept_m: 12 });
