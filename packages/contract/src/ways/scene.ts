import { flatLampNames } from "../scene/flat-lamp-names.js";
import { waterBases } from "../scene/water-bases.js";
import type { Way, Ways } from "./way.js";

const waterNames: Record<(typeof waterBases)[number]["field"], string> = {
  water_type: "WaterByType",
  chlorophyll_mg_m3: "WaterByChlorophyll",
  secchi_depth_m: "WaterBySecchiDepth",
  visibility_m: "WaterByVisibility",
  kd_samples: "WaterByAttenuation",
  card_samples: "WaterByCard",
};

const water: Ways = {
  says: "Describe the water in one way: water_type, or visibility_m with water_hue, or secchi_depth_m with water_hue, or chlorophyll_mg_m3, or kd_samples, or card_samples with transfer_curve.",
  ways: waterBases
    .map(({ field, needs, takes }): Way => ({ name: waterNames[field], needs: [field, ...needs], takes }))
    .reverse(),
};

const depth: Ways = {
  says: "Give one depth, depth_m, or two, min_depth_m and max_depth_m.",
  ways: [
    { name: "DepthRange", needs: ["min_depth_m", "max_depth_m"], takes: [] },
    { name: "OneDepth", needs: ["depth_m"], takes: [] },
  ],
};

const place = ["latitude_deg", "longitude_deg"];
const byPlace = {
  takes: ["daylight_basis", "camera_heading_deg"],
  values: { daylight_basis: ["place_time"] },
};

const daylight: Ways = {
  says: "Give daylight in one way: sun_elevation_deg, or a place (latitude_deg, longitude_deg) with time, or with local_time and time_zone, or daylight_basis none. camera_heading_deg needs place and time.",
  ways: [
    { name: "DaylightAbsent", needs: ["daylight_basis"], takes: [], values: { daylight_basis: ["none"] } },
    { name: "DaylightByClock", needs: [...place, "local_time", "time_zone"], ...byPlace },
    { name: "DaylightByInstant", needs: [...place, "time"], ...byPlace },
    {
      name: "DaylightBySun",
      needs: [],
      takes: ["daylight_basis", "sun_elevation_deg"],
      values: { daylight_basis: ["sun"] },
    },
  ],
};

const lensFilter: Ways = {
  says: "Give the filter on the lens in one way: filter_kind with filter_density or filter_stops, filter_transmittance, or filter_samples.",
  ways: [
    { name: "LensFilterBySamples", needs: ["filter_samples"], takes: [] },
    { name: "LensFilterByCurve", needs: ["filter_transmittance"], takes: [] },
    { name: "LensFilterByStops", needs: ["filter_kind", "filter_stops"], takes: [] },
    { name: "LensFilterOfDensity", needs: ["filter_kind", "filter_density"], takes: [] },
    { name: "NoLensFilter", needs: [], takes: [] },
  ],
};

const flatNeeds = ["lamp_flux_lm", "lamp_distance_m"];

const lights: Ways = {
  says: "Give video lights in one way: `lamps`, or lamp_flux_lm with lamp_distance_m and the other lamp_ fields.",
  ways: [
    { name: "LightsListed", needs: ["lamps"], takes: [] },
    {
      name: "LightsAlike",
      needs: flatNeeds,
      takes: flatLampNames.filter((name) => !flatNeeds.includes(name)),
    },
    { name: "NoLights", needs: [], takes: [] },
  ],
};

const kinds = ["port_kind", "lens_kind"];

const mounting: Ways = {
  says: "Say what a filter is mounted on with port_kind, lens_kind and what the lens sees: field_of_view_deg, or focal_length_mm with sensor_diagonal_mm.",
  ways: [
    { name: "MountByFocalLength", needs: [...kinds, "focal_length_mm", "sensor_diagonal_mm"], takes: [] },
    {
      name: "MountByView",
      needs: [...kinds, "field_of_view_deg"],
      takes: ["focal_length_mm", "sensor_diagonal_mm"],
    },
    { name: "NoMount", needs: [], takes: [] },
  ],
};

/** What a scene gives in one of several ways. */
export const sceneWays: readonly Ways[] = [water, depth, daylight, lensFilter, lights, mounting];
