import { exposureLoss } from "@sunfathom/planner";
import type { Template } from "../item/template.js";
import { remembered } from "../light/remember.js";
import { byDay } from "../light/scenes.js";

const WATER = "II";
const SUNS_DEG = [15, 25, 40, 60];
const SKIES = { clear: 0, overcast: 8 } as const;
type Sky = keyof typeof SKIES;
const DEPTHS_M = { 0: 5, 1: 10, 2: 15 } as const;
/** One must have this much more light than the next, in stops. */
const CLEARLY_STOPS = 0.4;
const COUNT = { beginner: 3, working: 4, expert: 5 };

const subject_ev = remembered(
  (sun_deg: number, sky: Sky, depth_m: number): number =>
    exposureLoss({ ...byDay(WATER, sun_deg, depth_m), cloud_oktas: SKIES[sky] }).depths[0]
      .exposure_value_ev100.likely,
);

/** When there is most light: the sun's height and the sky, and for experts the depth. */
export const brightestHour: Template = {
  id: "brightest_hour",
  topic: "light",
  interaction: "ordering",
  levels: ["beginner", "working", "expert"],
  make({ draw, level, say, show }) {
    const skies: readonly Sky[] =
      level === "beginner" ? [draw.pick(["clear", "overcast"])] : ["clear", "overcast"];
    const depths_m = level === "expert" ? Object.values(DEPTHS_M) : [draw.pick(Object.values(DEPTHS_M))];
    const all = skies.flatMap((sky) =>
      SUNS_DEG.flatMap((sun_deg) =>
        depths_m.map((depth_m) => ({ sky, sun_deg, depth_m, ev: subject_ev(sun_deg, sky, depth_m) })),
      ),
    );
    const drawn = draw.sample(all, COUNT[level]).sort((a, b) => b.ev - a.ev);
    if (drawn.some(({ ev }, i) => i > 0 && (drawn[i - 1]?.ev ?? 0) - ev < CLEARLY_STOPS)) return undefined;
    const text = say.dive.brightest_hour;
    const keyOf = ({ sky, sun_deg, depth_m }: (typeof drawn)[number]): string =>
      `${sky} ${sun_deg} ${depth_m}`;
    const named = drawn.map(({ sky, sun_deg, depth_m }) => {
      const words = { sun: show.deg(sun_deg), depth: show.m(depth_m) };
      return level === "expert" ? text.deepEntry[sky](words) : text.entry[sky](words);
    });
    const bySky = [...drawn].sort(
      (a, b) => SKIES[a.sky] - SKIES[b.sky] || b.sun_deg - a.sun_deg || a.depth_m - b.depth_m,
    );
    const bySun = [...drawn].sort((a, b) => b.sun_deg - a.sun_deg || b.ev - a.ev);
    const water = say.common.water[WATER];
    return {
      given: { entries: drawn.map(keyOf) },
      stem:
        level === "expert" ? text.deepStem({ water }) : text.stem({ water, depth: show.m(depths_m[0] ?? 0) }),
      answer: {
        interaction: "ordering",
        entries: drawn.map((entry, i) => ({ key: keyOf(entry), text: named[i] ?? "" })),
        anticipated: [
          { misconception: "low_sun_reaches_in", keys: [...drawn].reverse().map(keyOf) },
          { misconception: "sky_alone_counts", keys: bySky.map(keyOf) },
          { misconception: "sun_height_alone_counts", keys: bySun.map(keyOf) },
        ],
      },
      steps: [
        {
          operation: level === "beginner" ? "compare" : "judge",
          text: text.less({
            each: drawn.slice(1).map(({ ev }, i) => ({
              name: named[i + 1] ?? "",
              stops: show.stops((drawn[0]?.ev ?? ev) - ev),
            })),
          }),
        },
        { operation: "recall", text: text.last },
      ],
      sources: ["bird_riordan_1986", "light_field", "jerlov_1976"],
      basis: "computed",
    };
  },
};
