import type { RuleCases } from "./rule-cases.test-support.js";

const floor = [
  { wavelength_nm: 450, reflectance: 0.2 },
  { wavelength_nm: 650, reflectance: 0.3 },
];

const noon = { latitude_deg: -47.3, longitude_deg: -128.4, time: "2026-03-10T20:15:00Z" };

/** Of the rules on daylight, depth and what lies around. */
export const placeCases = {
  sun_with_basis_sun: {
    passes: [
      { sun_elevation_deg: 40 },
      { daylight_basis: "sun", sun_elevation_deg: 40 },
      { daylight_basis: "none" },
    ],
    refuses: [[{ daylight_basis: "none", sun_elevation_deg: 40 }, ["/sun_elevation_deg"]]],
  },
  place_with_basis_place_time: {
    passes: [noon, { daylight_basis: "place_time", ...noon }, { daylight_basis: "none" }],
    refuses: [
      [{ daylight_basis: "sun", ...noon }, ["/latitude_deg", "/longitude_deg", "/time"]],
      [{ daylight_basis: "none", time_zone: "Etc/GMT+9" }, ["/time_zone"]],
    ],
  },
  place_and_time_whole: {
    passes: [
      { daylight_basis: "place_time", ...noon },
      {
        daylight_basis: "place_time",
        latitude_deg: 0,
        longitude_deg: 0,
        local_time: "2026-03-10T10:15",
        time_zone: "Etc/GMT+9",
      },
      { daylight_basis: "sun" },
    ],
    refuses: [
      [{ daylight_basis: "place_time" }, ["/latitude_deg", "/longitude_deg", "/time"]],
      [{ latitude_deg: 0, longitude_deg: 0 }, ["/time"]],
      [{ daylight_basis: "place_time", ...noon, time_zone: "Etc/GMT+9" }, ["/time"]],
      [
        { daylight_basis: "place_time", latitude_deg: 0, longitude_deg: 0, local_time: "2026-03-10T10:15" },
        ["/time_zone"],
      ],
      [{ daylight_basis: "place_time", longitude_deg: 0, time: noon.time }, ["/latitude_deg"]],
    ],
  },
  // Leap years by the Gregorian calendar: 2000 is one, 2100 is none.
  day_exists: {
    passes: [{ time: "2000-02-29T10:00:00Z" }, { local_time: "2026-12-31T10:00" }],
    refuses: [
      [{ time: "2100-02-29T10:00:00Z" }, ["/time"]],
      [{ local_time: "2026-04-31T10:00" }, ["/local_time"]],
    ],
  },
  one_depth: {
    passes: [{ depth_m: 5 }, { min_depth_m: 5, max_depth_m: 9 }],
    refuses: [
      [{}, [""]],
      [{ min_depth_m: 5 }, ["/min_depth_m"]],
      [{ max_depth_m: 5 }, ["/max_depth_m"]],
      [{ depth_m: 5, max_depth_m: 9 }, ["/depth_m"]],
      [{ depth_m: 5, min_depth_m: 5, max_depth_m: 9 }, ["/depth_m"]],
    ],
  },
  depths_in_order: {
    passes: [
      { min_depth_m: 5, max_depth_m: 9 },
      { min_depth_m: 9, max_depth_m: 9 },
    ],
    refuses: [[{ min_depth_m: 9.1, max_depth_m: 9 }, ["/min_depth_m"]]],
  },
  one_sun_side: {
    passes: [{ sun_side: "beside" }, { ...noon, camera_heading_deg: 90 }],
    refuses: [[{ ...noon, sun_side: "beside", camera_heading_deg: 90 }, ["/sun_side"]]],
  },
  heading_with_place_time: {
    passes: [{ ...noon, camera_heading_deg: 90 }, { sun_side: "unknown" }],
    refuses: [
      [{ camera_heading_deg: 90 }, ["/camera_heading_deg"]],
      [{ daylight_basis: "none", camera_heading_deg: 90 }, ["/camera_heading_deg"]],
    ],
  },
  one_bottom: {
    passes: [{ bottom: "sand" }, { bottom_reflectance: floor }],
    refuses: [[{ bottom: "sand", bottom_reflectance: floor }, ["/bottom_reflectance"]]],
  },
  bottom_with_depth: {
    passes: [{ bottom: "none" }, { bottom: "sand", bottom_depth_m: 20 }, { bottom_depth_m: 20 }],
    refuses: [[{ bottom: "none", bottom_depth_m: 20 }, ["/bottom_depth_m"]]],
  },
  bottom_below_camera: {
    passes: [
      { depth_m: 12, bottom_depth_m: 12 },
      { min_depth_m: 5, max_depth_m: 18, bottom_depth_m: 18.5 },
    ],
    refuses: [
      [{ depth_m: 12, bottom_depth_m: 11.9 }, ["/bottom_depth_m"]],
      [{ min_depth_m: 5, max_depth_m: 18, bottom_depth_m: 12 }, ["/bottom_depth_m"]],
    ],
  },
  bottom_reflectance_rising: {
    passes: [{ bottom_reflectance: floor }, {}],
    refuses: [[{ bottom_reflectance: [...floor].reverse() }, ["/bottom_reflectance/1/wavelength_nm"]]],
  },
  overhead_parts: {
    passes: [
      { overhead: "ice", ice_thickness_m: 0.5, snow_thickness_m: 0.1 },
      { overhead: "cavern", daylight_open_share: 0.2 },
      { overhead: "none" },
    ],
    refuses: [
      [{ ice_thickness_m: 0.5 }, ["/ice_thickness_m"]],
      [{ overhead: "ice", daylight_open_share: 0.2 }, ["/daylight_open_share"]],
      [{ overhead: "cave", daylight_basis: "none", snow_thickness_m: 0.1 }, ["/snow_thickness_m"]],
    ],
  },
  cave_is_dark: {
    passes: [{ overhead: "cave" }, { overhead: "cave", daylight_basis: "none" }, { overhead: "cavern" }],
    refuses: [
      [{ overhead: "cave", daylight_basis: "sun" }, ["/overhead"]],
      [{ overhead: "cave", ...noon }, ["/overhead"]],
    ],
  },
} satisfies RuleCases;
