/** The scenes whose advice is kept as approved pages, by the name of the page. */

import {
  atNight,
  DARK_AND_GREEN,
  daylightScene,
  HARBOUR_WALL_AFTERNOON,
  NIGHT_WRECK,
  OUTER_REEF_MORNING,
  REEF_IN_THE_SHALLOWS,
  REEF_WITH_LAMPS,
  TWO_LAMPS,
} from "@sunfathom/fixtures/scenes";
import type { Scene } from "../../packages/planner/src/scene/scene.js";
import { DIVES } from "./approved-dives.js";
import { COLOURIST_WITH_PROFILE, PHONE_ON_AUTO, STUDENT_WITH_RED_FILTER } from "./three-finishes.js";

/** A morning at a place of its own, water as a diver describes it. */
function atPlaceAndTime(): Scene {
  const { water_type: _, sun_elevation_deg: __, ...rest } = daylightScene("", 0, 6, 16);
  return {
    ...rest,
    visibility_m: 15,
    water_hue: "blue_green",
    daylight_basis: "place_time",
    latitude_deg: -47.3,
    longitude_deg: -128.4,
    local_time: "2027-01-16T10:30",
    time_zone: "Etc/GMT+9",
    cloud_oktas: 3,
  };
}

/** A page, with the scene as the planner takes it: a caller may send it as it is. */
interface Approved {
  page: string;
  title: string;
  scene: object;
}

/** Graded by a profile, as scenes are taken where they say nothing of a finish. */
const AS_GRADED: readonly Approved[] = [
  {
    page: "blue-reef-morning",
    title: "Outer reef, morning: Jerlov IB, sun 40 degrees, 5 to 18 m, no video lights",
    scene: OUTER_REEF_MORNING,
  },
  {
    page: "harbour-wall",
    title: "Harbour wall, afternoon: Jerlov 3C, sun 50 degrees, 4 to 12 m, no video lights",
    scene: HARBOUR_WALL_AFTERNOON,
  },
  {
    page: "night-wreck",
    title: "Wreck at night: Jerlov IB, 15 m, two video lights of 4000 lm at 0.8 m",
    scene: NIGHT_WRECK,
  },
  {
    page: "reef-with-lamps",
    title:
      "Reef by day with video lights: Jerlov IB, sun 50 degrees, 12 m, two video lights of 4000 lm at 0.8 m",
    scene: REEF_WITH_LAMPS,
  },
  {
    page: "shallow-reef",
    title: "Reef in the shallows: Jerlov IB, sun 40 degrees, 1.5 m",
    scene: REEF_IN_THE_SHALLOWS,
  },
  {
    page: "dark-green",
    title: "Dark and green: Jerlov 5C, sun 15 degrees, 14 m, ISO 800 at most",
    scene: DARK_AND_GREEN,
  },
  {
    page: "flip-mount",
    title: "Flip mount: Jerlov IB, sun 55 degrees, 1 to 15 m",
    scene: { ...daylightScene("IB", 55, 1, 15), filter_change_underwater: "flip" },
  },
  {
    page: "kit",
    title:
      "Kit with a soft red filter, video lights and blue filters for them: Jerlov IB, sun 50 degrees, 8 to 14 m",
    scene: {
      ...daylightScene("IB", 50, 8, 14),
      lamps: [TWO_LAMPS],
      kit: [
        { id: "soft-red", item: "lens_filter", filter_kind: "red", filter_density: 0.45 },
        { id: "lamp-blue", item: "lamp_filter", filter_kind: "blue", filter_density: 0.9 },
        { id: "video-lamps", item: "lamp" },
      ],
    },
  },
  {
    page: "place-and-time",
    title:
      "By place and clock: Quillbarrow, 47.3 S 128.4 W, 10:30 on 16 January, visibility 15 m, blue-green, 6 to 16 m",
    scene: atPlaceAndTime(),
  },
  {
    page: "cave",
    title: "Cave in coastal water: Jerlov 1C, no daylight, 8 to 20 m, two video lights of 4000 lm at 1.2 m",
    scene: {
      ...atNight(daylightScene("1C", 45, 8, 20)),
      subject_distance_m: 1.5,
      lamps: [{ ...TWO_LAMPS, distance_m: 1.2 }],
    },
  },
];

/** Three ways to finish pictures of one reef. */
const FINISHED: readonly Approved[] = [
  {
    page: "phone-on-auto",
    title: "A guest with a phone on auto: Jerlov IB, sun 50 degrees, 5 to 12 m",
    scene: PHONE_ON_AUTO,
  },
  {
    page: "student-with-red-filter",
    title: "A student with a red filter and a slate: Jerlov IB, sun 50 degrees, 5 to 12 m",
    scene: STUDENT_WITH_RED_FILTER,
  },
  {
    page: "colourist-with-profile",
    title: "A colourist with a profile of a filmed chart: Jerlov IB, sun 50 degrees, 5 to 12 m",
    scene: COLOURIST_WITH_PROFILE,
  },
];

export const APPROVED_SCENES: readonly Approved[] = [...AS_GRADED, ...FINISHED, ...DIVES];
