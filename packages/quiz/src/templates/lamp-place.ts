import type { MisconceptionId } from "@sunfathom/words";
import type { OptionDraft } from "../item/draft.js";
import type { Template } from "../item/template.js";

const GOOD = ["closer", "arms", "outward", "clear_of_sand", "dim_by_day", "behind_port"] as const;
const BAD = {
  beside_lens: "lamp_beside_lens",
  on_top: "lamp_beside_lens",
  crossed: "beams_crossed",
  brighter: "haze_outshone",
  back_off: "farther_is_clearer",
  iso: "iso_beats_haze",
  red_filter: "filter_beats_haze",
} as const satisfies Record<string, MisconceptionId>;
const BAD_IDS = Object.keys(BAD) as (keyof typeof BAD)[];
const COUNT = { beginner: 4, working: 5, expert: 6 };

/** Where video lights go, and what keeps backscatter out of the picture: common practice. */
export const lampPlace: Template = {
  id: "lamp_place",
  topic: "lamps",
  interaction: "multiple_choice",
  levels: ["beginner", "working", "expert"],
  advises: ["light", "closer"],
  make({ draw, level, say }) {
    const { option, stem, last } = say.practice.lamp_place;
    const good = draw.sample(GOOD, 1 + draw.below(3));
    const bad = draw.sample(BAD_IDS, COUNT[level] - good.length);
    const options: OptionDraft[] = [
      ...good.map((value) => ({ value, text: draw.pick(option[value]), right: true })),
      ...bad.map((value) => ({
        value,
        text: draw.pick(option[value]),
        right: false,
        misconception: BAD[value],
      })),
    ];
    return {
      given: { options: options.map(({ value }) => String(value)) },
      stem,
      answer: { interaction: "multiple_choice", options },
      steps: [{ operation: level === "beginner" ? "recall" : "judge", text: last }],
      sources: ["common_practice"],
      basis: "common_practice",
    };
  },
};
