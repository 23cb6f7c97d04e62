import type { MisconceptionId } from "@sunfathom/words";
import type { OptionDraft } from "../item/draft.js";
import type { Template } from "../item/template.js";
import { WATERS } from "../light/scenes.js";

const MISTAKES = {
  iso: "iso_adds_light",
  filter: "filter_adds_light",
  balance: "balance_adds_light",
  grade: "grade_adds_light",
} as const satisfies Record<string, MisconceptionId>;
const COUNT = { beginner: 4, working: 5, expert: 6 };

/** What brings red light, and what only looks so. */
export const moreRedLight: Template = {
  id: "more_red_light",
  topic: "exposure",
  interaction: "multiple_choice",
  levels: ["beginner", "working", "expert"],
  advises: ["light", "way_up"],
  make({ draw, level, say, show }) {
    const water = draw.pick(WATERS);
    const depth_m = draw.pick([8, 10, 12, 15]);
    const shallower_m = depth_m / 2;
    const lamp_m = draw.pick([0.5, 0.6, 0.8]);
    const { option, feedback, stem, last } = say.exposure.more_red_light;
    const right: OptionDraft[] = [
      { value: "aperture", text: draw.pick(option.aperture), right: true, feedback: feedback.aperture },
      { value: "shutter", text: draw.pick(option.shutter), right: true, feedback: feedback.shutter },
      {
        value: "shallower",
        text: draw.pick(option.shallower({ depth: show.m(shallower_m) })),
        right: true,
        feedback: feedback.shallower,
      },
      {
        value: "lamp",
        text: draw.pick(option.lamp({ distance: show.m(lamp_m) })),
        right: true,
        feedback: feedback.lamp,
      },
    ];
    const wrong: OptionDraft[] = (["iso", "filter", "balance", "grade"] as const).map((value) => ({
      value,
      text: draw.pick(option[value]),
      right: false,
      misconception: MISTAKES[value],
    }));
    const options = draw.sample([...right, ...wrong], COUNT[level]);
    return {
      given: { water, depth_m, shallower_m, lamp_m, options: options.map(({ value }) => String(value)) },
      stem: stem({ depth: show.m(depth_m), water: say.common.water[water] }),
      answer: { interaction: "multiple_choice", options },
      steps: [{ operation: "recall", text: last }],
      sources: ["camera_recording", "jerlov_1976"],
      basis: "computed",
    };
  },
};
