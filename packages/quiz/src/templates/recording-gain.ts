import type { Recording } from "@sunfathom/planner";
import type { MisconceptionId } from "@sunfathom/words";
import type { OptionDraft } from "../item/draft.js";
import type { Template } from "../item/template.js";
import { redRecordedAt } from "../light/remembered.js";
import { byDay } from "../light/scenes.js";

const SUN_DEG = 50;
const FORMS = ["ten_bits", "raw"] as const;
type Form = (typeof FORMS)[number];
const BITS: Record<Form, 10 | 12> = { ten_bits: 10, raw: 12 };
const GOOD: Record<Form, readonly ("steps" | "stretch" | "later_balance" | "later_sharpening")[]> = {
  ten_bits: ["steps", "stretch"],
  raw: ["steps", "stretch", "later_balance", "later_sharpening"],
};
const BAD = {
  red: "bits_bring_back",
  noise: "bits_take_noise",
  clipped: "sensor_full_comes_back",
  smear: "grade_sharpens_smear",
  two_lights: "grade_mends_split",
} as const satisfies Record<string, MisconceptionId>;
const BAD_IDS = Object.keys(BAD) as (keyof typeof BAD)[];
const COUNT = { working: 5, expert: 6 };

const codesOf = (recording: Recording, form: Form): number =>
  BITS[form] === 10 ? recording.red_codes_per_stop_10_bit : recording.red_codes_per_stop_12_bit;

/** What more bits and raw files give, and what no file can. */
export const recordingGain: Template = {
  id: "recording_gain",
  topic: "grading",
  interaction: "multiple_choice",
  levels: ["working", "expert"],
  make({ draw, level, say, show }) {
    const form = draw.pick(FORMS);
    const water = draw.pick(["IB", "II", "1C"] as const);
    const depth_m = draw.pick([6, 8, 10]);
    const scene = byDay(water, SUN_DEG, depth_m);
    const [plain] = redRecordedAt(scene).depths[0].recordings;
    const [finer] = redRecordedAt({ ...scene, bits: BITS[form] }).depths[0].recordings;
    if (plain === undefined || finer === undefined) return undefined;
    const text = say.practice.recording_gain;
    const good = GOOD[form].map((value) => ({ value, text: draw.pick(text.option[value]), right: true }));
    const bad: OptionDraft[] = BAD_IDS.map((value) => ({
      value,
      text: draw.pick(text.option[value]),
      right: false,
      misconception: BAD[value],
    }));
    const rights = draw.sample(good, 1 + draw.below(Math.min(3, good.length)));
    const count = level === "expert" ? COUNT.expert : COUNT.working;
    const options = [...rights, ...draw.sample(bad, count - rights.length)];
    if (options.length < count) return undefined;
    return {
      given: { form, water, depth_m, options: options.map(({ value }) => String(value)) },
      stem: text.stem[form],
      answer: { interaction: "multiple_choice", options },
      steps: [
        {
          operation: "compare",
          text: text.figures[form]({
            scene: text.at({ depth: show.m(depth_m), water: say.common.water[water] }),
            few: show.fixed(plain.red_codes_per_stop_8_bit, 0),
            many: show.fixed(codesOf(finer, form), 0),
            before: show.fixed(plain.red_light_signal_to_noise.likely, 1),
            after: show.fixed(finer.red_light_signal_to_noise.likely, 1),
          }),
        },
        { operation: level === "expert" ? "judge" : "recall", text: text.last },
      ],
      sources: ["camera_recording", "jerlov_1976", "common_practice"],
      basis: "computed",
    };
  },
};
