import type { MisconceptionId } from "@sunfathom/words";
import type { OptionDraft } from "../item/draft.js";
import type { Template } from "../item/template.js";

const GOOD = [
  "on_in_water",
  "off_before_air",
  "away_from_eyes",
  "stay_on_rig",
  "rig_tried_out",
  "filter_dry",
  "rinse",
  "practise_flip",
  "beams_away",
  "hands_dry",
  "dim_near_animals",
] as const;
const BAD = {
  test_in_air: "lamp_tested_in_air",
  warm_up: "lamp_tested_in_air",
  hand_in_air: "lamp_tested_in_air",
  face_fish: "lamp_pointed_at_eyes",
  open_wet: "housing_opened_wet",
  filter_near_lamp: "lamp_tested_in_air",
  shine_at_buddy: "lamp_pointed_at_eyes",
  look_into: "lamp_pointed_at_eyes",
  leave_one_off: "lamp_taken_off",
  open_at_edge: "housing_opened_wet",
} as const satisfies Record<string, MisconceptionId>;
const BAD_IDS = Object.keys(BAD) as (keyof typeof BAD)[];

/** Safe practice with lamps and housings. */
export const safeLamps: Template = {
  id: "safe_lamps",
  topic: "safety",
  interaction: "multiple_choice",
  levels: ["beginner", "working"],
  advises: ["light", "filter_on_land", "filter_under_water"],
  make({ draw, level, say }) {
    const { option, stem, last } = say.safety.safe_lamps;
    const good = draw.sample(GOOD, 1 + draw.below(3));
    const bad = draw.sample(BAD_IDS, (level === "beginner" ? 4 : 5) - good.length);
    const options: OptionDraft[] = [
      ...good.map((value) => ({ value, text: option[value], right: true })),
      ...bad.map((value) => ({ value, text: option[value], right: false, misconception: BAD[value] })),
    ];
    return {
      given: { options: options.map(({ value }) => String(value)) },
      stem,
      answer: { interaction: "multiple_choice", options },
      steps: [{ operation: "recall", text: last }],
      sources: ["common_practice"],
      basis: "common_practice",
    };
  },
};
