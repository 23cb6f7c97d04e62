import type { FloorKind } from "@sunfathom/optics";
import { exposureLoss } from "@sunfathom/planner";
import type { Template } from "../item/template.js";
import { remembered } from "../light/remember.js";
import { byDay, type Water } from "../light/scenes.js";

const SUN_DEG = 50;
const DEPTH_M = 5;
/** Floors that differ clearly, the brightest first. */
const FLOORS = ["sand", "coral", "seagrass"] as const satisfies readonly FloorKind[];
type Floor = (typeof FLOORS)[number];
const HEIGHTS_M = [1, 3, 6];
/** One floor must send up this much more light than the next, in stops. */
const CLEARLY_STOPS = 0.07;
const COUNT = { beginner: 3, working: 4 };

/** By how much light from the floor adds to an upright subject, in stops. */
const added_stops = remembered((water: Water, floor: Floor, height_m: number): number => {
  const deep = byDay(water, SUN_DEG, DEPTH_M);
  const ev = (scene: typeof deep): number => exposureLoss(scene).depths[0].exposure_value_ev100.likely;
  return ev({ ...deep, bottom: floor, bottom_depth_m: DEPTH_M + height_m }) - ev(deep);
});

/** What the sea floor adds to the light on a subject. */
export const floorLight: Template = {
  id: "floor_light",
  topic: "light",
  interaction: "ordering",
  levels: ["beginner", "working"],
  make({ draw, level, say, show }) {
    const water = draw.pick(["IB", "II"] as const);
    const height_m = draw.pick(HEIGHTS_M.slice(0, 2));
    const all =
      level === "beginner"
        ? FLOORS.map((floor) => ({ floor, height_m }))
        : FLOORS.flatMap((floor) => HEIGHTS_M.map((m) => ({ floor, height_m: m })));
    const drawn = draw
      .sample(all, level === "beginner" ? COUNT.beginner : COUNT.working)
      .map((entry) => ({ ...entry, stops: added_stops(water, entry.floor, entry.height_m) }))
      .sort((a, b) => b.stops - a.stops);
    if (drawn.some(({ stops }, i) => i > 0 && (drawn[i - 1]?.stops ?? 0) - stops < CLEARLY_STOPS))
      return undefined;
    const text = say.dive.floor_light;
    const keyOf = (entry: (typeof drawn)[number]): string => `${entry.floor} ${entry.height_m}`;
    const named = drawn.map(({ floor, height_m: m }) => text.entry[floor]({ height: show.m(m) }));
    const byFloor = [...drawn].sort(
      (a, b) => FLOORS.indexOf(a.floor) - FLOORS.indexOf(b.floor) || b.height_m - a.height_m,
    );
    const byHeight = [...drawn].sort((a, b) => a.height_m - b.height_m || b.stops - a.stops);
    return {
      given: { water, entries: drawn.map(keyOf) },
      stem: text.stem({ water: say.common.water[water], depth: show.m(DEPTH_M) }),
      answer: {
        interaction: "ordering",
        entries: drawn.map((entry, i) => ({ key: keyOf(entry), text: named[i] ?? "" })),
        anticipated: [
          { misconception: "dark_floor_lights_up", keys: [...drawn].reverse().map(keyOf) },
          { misconception: "floor_alone_counts", keys: byFloor.map(keyOf) },
          { misconception: "height_alone_counts", keys: byHeight.map(keyOf) },
        ],
      },
      steps: [
        {
          operation: level === "beginner" ? "compare" : "judge",
          text: text.added({
            each: drawn.map(({ stops }, i) => ({ name: named[i] ?? "", stops: show.stops(stops, 2) })),
          }),
        },
        { operation: "recall", text: text.last },
      ],
      sources: ["bottom_reflectance", "light_field", "jerlov_1976"],
      basis: "computed",
    };
  },
};
