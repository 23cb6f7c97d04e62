import type { MisconceptionId } from "@sunfathom/words";
import type { OptionDraft } from "../item/draft.js";
import type { Template } from "../item/template.js";

const GOOD = ["maker", "watched", "damaged", "flooded", "dry_seals", "cool", "flight", "rest"] as const;
const BAD = {
  overnight: "charged_unattended",
  rinse_inside: "battery_wetted",
  any_charger: "any_charger_fits",
  sun: "battery_heated",
  try_flooded: "flooded_battery_kept",
  loose: "contacts_left_bare",
  hot_charge: "battery_heated",
} as const satisfies Record<string, MisconceptionId>;
const BAD_IDS = Object.keys(BAD) as (keyof typeof BAD)[];
const COUNT = { beginner: 4, working: 5, expert: 6 };

/** Batteries of video lights: common practice. */
export const safeBatteries: Template = {
  id: "safe_batteries",
  topic: "safety",
  interaction: "multiple_choice",
  levels: ["beginner", "working", "expert"],
  advises: ["light"],
  make({ draw, level, say }) {
    const { option, stem, last } = say.more.safe_batteries;
    const good = draw.sample(GOOD, 1 + draw.below(3));
    const bad = draw.sample(BAD_IDS, COUNT[level] - good.length);
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
