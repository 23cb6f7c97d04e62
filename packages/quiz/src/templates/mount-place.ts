import { type FilterMountingScene, filterMounting } from "@sunfathom/planner";
import type { Level } from "../item/item.js";
import type { Template } from "../item/template.js";
import type { Draw } from "../random/draw.js";

const COMMON: Omit<FilterMountingScene, "port_kind" | "lens_kind" | "lens_interchangeable"> = {
  f_number: 8,
  sensor_diagonal_mm: 43.3,
  filter_thickness_mm: 3,
  filter_material: "glass",
  wet_lens: "none",
  zoom_travel_mm: 0,
  rings: [],
  rear_fixing: "slot",
  sheet_thickness_mm: 0.1,
  sheet_refractive_index: 1.5,
  filter_change_underwater: "none",
};

type Camera = "fisheye" | "flat" | "dome" | "wide" | "action";
/** What is asked at each level: for each place one camera or more, so that no place is right more often than another. */
const CAMERAS: Partial<Record<Level, readonly (readonly Camera[])[]>> = {
  beginner: [["fisheye"], ["dome"], ["action"]],
  working: [["wide"], ["dome"], ["flat", "action"]],
};
const PLACES = ["behind_lens", "on_lens", "before_port"] as const;
type Place = (typeof PLACES)[number];

/** The planner's scene for a camera of the question. */
function mountingScene(camera: Camera, thread_mm: number, dome_mm: number): FilterMountingScene {
  if (camera === "fisheye") {
    return {
      ...COMMON,
      port_kind: "dome",
      dome_radius_mm: dome_mm,
      lens_kind: "fisheye",
      focal_length_mm: 15,
      lens_interchangeable: true,
    };
  }
  if (camera === "wide") {
    return {
      ...COMMON,
      port_kind: "dome",
      dome_radius_mm: dome_mm,
      lens_kind: "wide",
      focal_length_mm: 14,
      lens_interchangeable: true,
    };
  }
  if (camera === "action") {
    return {
      ...COMMON,
      port_kind: "none",
      lens_kind: "wide",
      field_of_view_deg: 110,
      sensor_diagonal_mm: 7.7,
      lens_interchangeable: false,
    };
  }
  const standard = {
    ...COMMON,
    lens_kind: "standard",
    focal_length_mm: 35,
    lens_thread_mm: thread_mm,
  } as const;
  if (camera === "dome") {
    return { ...standard, port_kind: "dome", dome_radius_mm: dome_mm, lens_interchangeable: false };
  }
  return {
    ...standard,
    port_kind: "flat",
    port_thread_mm: thread_mm,
    lens_interchangeable: true,
    filter_change_underwater: "clip_on",
  };
}

const drawn = (draw: Draw, level: Level): { camera: Camera; thread_mm: number; dome_mm: number } => ({
  camera: draw.pick(draw.pick(CAMERAS[level] ?? [["fisheye"]])),
  thread_mm: draw.pick([52, 55, 58, 62, 67, 72, 77]),
  dome_mm: draw.pick([80, 90, 100, 110, 120]),
});

/** Where the filter goes. */
export const mountPlace: Template = {
  id: "mount_place",
  topic: "mounting",
  interaction: "single_choice",
  levels: ["beginner", "working"],
  advises: ["filter_on_land", "filter_under_water"],
  make({ draw, level, say, show }) {
    const { camera, thread_mm, dome_mm } = drawn(draw, level);
    const answer = filterMounting(mountingScene(camera, thread_mm, dome_mm));
    // Before a port or before a window is one answer.
    const placed = answer.place === "before_window" ? "before_port" : answer.place;
    const key: Place | undefined = PLACES.find((place) => place === placed);
    const others = answer.options.filter(
      ({ place, verdict }) => place !== answer.place && verdict === "fits",
    );
    if (key === undefined || answer.verdict === "does_not_fit") return undefined;
    // Of two places that fit equally well neither is the one answer, unless only one can be changed at depth.
    if (camera !== "flat" && others.length > 0) return undefined;
    const text = say.mounting.mount_place;
    const stem = {
      fisheye: text.fisheyeStem({ dome: show.mm(dome_mm) }),
      flat: text.flatStem({ thread: show.mm(thread_mm) }),
      wide: text.wideStem({ dome: show.mm(dome_mm) }),
      action: text.actionStem,
      dome: text.domeStem({ thread: show.mm(thread_mm), dome: show.mm(dome_mm) }),
    }[camera];
    return {
      given: { camera, thread_mm, dome_mm },
      stem,
      answer: {
        interaction: "single_choice",
        options: PLACES.map((place) => ({
          value: place,
          text: text.option[place],
          right: place === key,
          ...(place === key ? {} : { misconception: MISTAKE[camera][place] }),
        })),
      },
      steps: [{ operation: "recall", text: text.last[camera] }],
      sources: ["mounting_practice"],
      basis: "common_practice",
    };
  },
};

const MISTAKE = {
  fisheye: {
    behind_lens: "filter_goes_in_front",
    on_lens: "filter_goes_in_front",
    before_port: "filter_goes_in_front",
  },
  flat: {
    behind_lens: "fixed_filter_changed",
    on_lens: "fixed_filter_changed",
    before_port: "fixed_filter_changed",
  },
  wide: {
    behind_lens: "filter_goes_in_front",
    on_lens: "filter_goes_in_front",
    before_port: "filter_before_dome",
  },
  action: {
    behind_lens: "sealed_camera_opened",
    on_lens: "sealed_camera_opened",
    before_port: "sealed_camera_opened",
  },
  dome: {
    behind_lens: "fixed_lens_opened",
    on_lens: "filter_before_dome",
    before_port: "filter_before_dome",
  },
} as const;
