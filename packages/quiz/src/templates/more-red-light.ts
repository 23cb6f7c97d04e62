import type { MisconceptionId } from "@sunfathom/words";
import type { OptionDraft } from "../item/draft.js";
import type { Maker, Template } from "../item/template.js";
import { lightAt, mixAt } from "../light/remembered.js";
import { byDay, twoLamps, WATERS, type Water } from "../light/scenes.js";

const MISTAKES = {
  iso: "iso_adds_light",
  filter: "filter_adds_light",
  balance: "balance_adds_light",
  grade: "grade_adds_light",
} as const satisfies Record<string, MisconceptionId>;
const SUN_DEG = 50;
const COUNT = { beginner: 4, working: 5, expert: 6 };

interface Place {
  water: Water;
  depth_m: number;
}

/** What brings red light, and what only looks so; experts are asked what brings twice as much. */
export const moreRedLight: Template = {
  id: "more_red_light",
  topic: "exposure",
  interaction: "multiple_choice",
  levels: ["beginner", "working", "expert"],
  advises: ["light", "way_up"],
  make(maker) {
    const { draw, level, say, show } = maker;
    const place = { water: draw.pick(WATERS), depth_m: draw.pick([8, 10, 12, 15]) };
    const { stem, doubleStem, last, doubleLast } = say.exposure.more_red_light;
    const twice = level === "expert";
    const light = twice ? inAmounts(place, maker) : inKind(place, maker);
    const options = draw.sample([...light.options, ...noLight(maker)], COUNT[level]);
    const said = { depth: show.m(place.depth_m), water: say.common.water[place.water] };
    return {
      given: { ...place, ...light.given, options: options.map(({ value }) => String(value)) },
      stem: twice ? doubleStem(said) : stem(said),
      answer: { interaction: "multiple_choice", options },
      steps: twice
        ? [
            { operation: "judge", text: doubleLast },
            { operation: "recall", text: last },
          ]
        : [{ operation: level === "working" ? "compare" : "recall", text: last }],
      sources: ["camera_recording", "jerlov_1976"],
      basis: "computed",
    };
  },
};

interface Offered {
  given: Record<string, number>;
  options: OptionDraft[];
}

/** All of them bring red light. */
function inKind({ depth_m }: Place, { draw, say, show }: Maker): Offered {
  const shallower_m = depth_m / 2;
  const lamp_m = draw.pick([0.5, 0.6, 0.8]);
  const { option, feedback } = say.exposure.more_red_light;
  const texts = {
    aperture: option.aperture,
    shutter: option.shutter,
    shallower: option.shallower({ depth: show.m(shallower_m) }),
    lamp: option.lamp({ distance: show.m(lamp_m) }),
  };
  const options = (["aperture", "shutter", "shallower", "lamp"] as const).map((value) => ({
    value,
    text: draw.pick(texts[value]),
    right: true,
    feedback: feedback[value],
  }));
  return { given: { shallower_m, lamp_m }, options };
}

/** What surely is a stop and more, and what surely is less. */
const SURELY_STOPS = { more: 1.15, less: 0.85 };

/** Some bring twice as much, others too little; those that come too near to it are left out. */
function inAmounts({ water, depth_m }: Place, { draw, say, show }: Maker): Offered {
  const { option, feedback } = say.exposure.more_red_light;
  const offer = (value: string, stops: number, text: string, why: string): OptionDraft[] => {
    if (stops > SURELY_STOPS.less && stops < SURELY_STOPS.more) return [];
    if (stops > 1) return [{ value, text, right: true, feedback: why }];
    const feedbackOf = `${say.misconceptions.step_too_small} ${why}`;
    return [{ value, text, right: false, misconception: "step_too_small", feedback: feedbackOf }];
  };
  const [f_from, f_to] = draw.pick([
    [8, 4],
    [5.6, 4.5],
    [8, 7.1],
    [11, 5.6],
  ] as const);
  const [s_from, s_to] = draw.pick([
    [100, 25],
    [50, 40],
    [60, 50],
    [200, 50],
  ] as const);
  const up_m = draw.pick([1, 2, 4, 5]);
  const lamp_m = draw.pick([0.4, 0.6]);
  const lossAt = (m: number) => lightAt(byDay(water, SUN_DEG, m)).depths[0].red_loss_stops.likely;
  const shallower_stops = lossAt(depth_m) - lossAt(depth_m - up_m);
  const lamp = mixAt({ ...byDay(water, SUN_DEG, depth_m), lamps: [twoLamps(lamp_m)] }).depths[0];
  // Light that is as strong as daylight, even where least of it comes, doubles what there is.
  const doubles = (lamp.red_lamp_over_daylight_stops?.low ?? Number.NEGATIVE_INFINITY) > 0.3;
  return {
    given: { up_m, lamp_m },
    options: [
      ...offer(
        `aperture ${f_from} ${f_to}`,
        2 * Math.log2(f_from / f_to),
        option.apertureTo({ from: show.f(f_from), to: show.f(f_to) }),
        feedback.aperture,
      ),
      ...offer(
        `shutter ${s_from} ${s_to}`,
        Math.log2(s_from / s_to),
        option.shutterTo({ from: show.s(1 / s_from), to: show.s(1 / s_to) }),
        feedback.shutter,
      ),
      ...offer(
        `shallower ${depth_m - up_m}`,
        shallower_stops,
        draw.pick(option.shallower({ depth: show.m(depth_m - up_m) })),
        feedback.shallowerBy({ stops: show.stops(shallower_stops) }),
      ),
      ...(doubles
        ? [
            {
              value: ["lamp", lamp_m].join(" "),
              text: draw.pick(option.lamp({ distance: show.m(lamp_m) })),
              right: true,
              feedback: feedback.lamp,
            },
          ]
        : []),
    ],
  };
}

const noLight = ({ draw, say }: Maker): OptionDraft[] =>
  (["iso", "filter", "balance", "grade"] as const).map((value) => ({
    value,
    text: draw.pick(say.exposure.more_red_light.option[value]),
    right: false,
    misconception: MISTAKES[value],
  }));
