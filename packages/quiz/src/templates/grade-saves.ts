import type { MisconceptionId } from "@sunfathom/words";
import type { OptionDraft } from "../item/draft.js";
import type { Maker, Template } from "../item/template.js";
import { redRecordedAt } from "../light/remembered.js";
import { byDay } from "../light/scenes.js";

const SUN_DEG = 50;
const GOOD = ["cast", "dark", "contrast"] as const;
const BAD = {
  clipped: "grade_fills_clipped",
  tint: "tint_brings_red",
  bits: "bits_bring_back",
  split: "grade_mends_split",
  smear: "grade_sharpens_smear",
} as const satisfies Record<string, MisconceptionId>;
const BAD_IDS = Object.keys(BAD) as (keyof typeof BAD)[];
const COUNT = { beginner: 4, working: 5, expert: 6 };

/** What a grade can save and what it cannot. */
export const gradeSaves: Template = {
  id: "grade_saves",
  topic: "grading",
  interaction: "multiple_choice",
  levels: ["beginner", "working", "expert"],
  advises: ["light"],
  make(maker) {
    const { draw, level, say } = maker;
    const red = redAt(maker);
    if (red === undefined) return undefined;
    const text = say.more.grade_saves;
    const good = GOOD.map((value) => ({ value, text: draw.pick(text.option[value]), right: true }));
    const bad = BAD_IDS.map((value) => ({
      value,
      text: draw.pick(text.option[value]),
      right: false,
      misconception: BAD[value],
    }));
    const options: OptionDraft[] = draw.sample([red, ...good, ...bad], COUNT[level]);
    return {
      given: { options: options.map(({ value }) => String(value)) },
      stem: text.stem,
      answer: { interaction: "multiple_choice", options },
      steps: [{ operation: level === "beginner" ? "recall" : "judge", text: text.last }],
      sources: ["camera_recording", "jerlov_1976", "common_practice"],
      basis: "computed",
    };
  },
};

/** The red of a subject at a depth, where the model leaves no doubt whether enough of it was recorded. */
function redAt({ draw, say, show }: Maker): OptionDraft | undefined {
  const water = draw.pick(["IB", "II", "1C"] as const);
  const depth_m = draw.pick([2, 3, 18, 24]);
  const recorded = redRecordedAt(byDay(water, SUN_DEG, depth_m)).depths[0]?.recordings[0];
  if (recorded === undefined) return undefined;
  const { low, high } = recorded.red_light_signal_to_noise;
  if (!(low > 5.3 || high < 1)) return undefined;
  const texts = say.more.grade_saves.option.red({ depth: show.m(depth_m), water: say.common.water[water] });
  const option = { value: `red ${water} ${depth_m}`, text: draw.pick(texts) };
  return low > 5.3
    ? { ...option, right: true }
    : { ...option, right: false, misconception: "grade_restores_all" };
}
