import type { MisconceptionId } from "@sunfathom/words";
import type { OptionDraft } from "../item/draft.js";
import type { Template } from "../item/template.js";
import { redRecordedAt } from "../light/remembered.js";
import { byDay, WATERS } from "../light/scenes.js";

const SUN_DEG = 50;
/** Signal over noise of red light: well recorded above (see `RedQuality` of the planner), lost below. */
const GOOD_FROM = 5.3;
const GONE_BELOW = 1;

/** What grading can still do for red. */
export const redInPost: Template = {
  id: "red_in_post",
  topic: "grading",
  interaction: "single_choice",
  levels: ["beginner", "working", "expert"],
  make({ draw, say, show }) {
    const water = draw.pick(WATERS);
    const depth_m = draw.pick([2, 3, 18, 24]);
    const recording = redRecordedAt(byDay(water, SUN_DEG, depth_m)).depths[0]?.recordings.find(
      (r) => r.recording === "no_filter",
    );
    const signal = recording?.red_light_signal_to_noise;
    if (!signal) return undefined;
    const good = signal.low > GOOD_FROM;
    if (!good && signal.high > GONE_BELOW) return undefined;
    const text = say.grading.red_in_post;
    const { wrongly, ...rightly } = text.option;
    const wrong = (value: keyof typeof wrongly, misconception: MisconceptionId): OptionDraft => ({
      value,
      text: draw.pick(wrongly[value]),
      right: false,
      misconception,
    });
    const key = good ? "restore" : "none";
    const options: OptionDraft[] = [
      { value: key, text: rightly[key], right: true },
      good ? wrong("none", "red_lost_at_once") : wrong("restore", "grade_restores_all"),
      wrong("bits", "bits_bring_back"),
      wrong("tint", "tint_brings_red"),
    ];
    return {
      given: { water, sun_deg: SUN_DEG, depth_m },
      stem: text.stem({
        scene: say.common.scene({ water: say.common.water[water], sun: show.deg(SUN_DEG) }),
        depth: show.m(depth_m),
      }),
      answer: { interaction: "single_choice", options },
      steps: [
        {
          operation: "compare",
          text: text.signal({
            snr: show.fixed(signal.likely, 1),
            low: show.fixed(signal.low, 1),
            high: show.fixed(signal.high, 1),
          }),
        },
        { operation: "recall", text: good ? text.last.good : text.last.gone },
      ],
      sources: ["camera_recording", "mean_sensor", "jerlov_1976"],
      basis: "computed",
    };
  },
};
