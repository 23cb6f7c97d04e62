import type { Recording } from "@sunfathom/planner";
import type { MisconceptionId } from "@sunfathom/words";
import type { Template } from "../item/template.js";
import { redRecordedAt } from "../light/remembered.js";
import { byDay, WATERS } from "../light/scenes.js";

const SUN_DEG = 50;
/** Signal over noise of red light: well recorded above (see `RedQuality` of the planner), lost below. */
const GOOD_FROM = 5.3;
const GONE_BELOW = 1;
const DEPTHS_M = [2, 3, 4, 10, 12, 18, 24];
const FILTER_DENSITY = 0.9;

const KEYS = ["restore", "part", "none"] as const;
type Key = (typeof KEYS)[number];
const MISTAKE: Record<Key, MisconceptionId> = {
  restore: "grade_restores_all",
  part: "half_always_saved",
  none: "red_lost_at_once",
};

/** What becomes of red where the model's doubt leaves no other answer. */
function fate({ low, high }: Recording["red_light_signal_to_noise"]): Key | undefined {
  if (low > GOOD_FROM) return "restore";
  if (high < GONE_BELOW) return "none";
  return low > GONE_BELOW && high < GOOD_FROM ? "part" : undefined;
}

/** What grading can still do for red. */
export const redInPost: Template = {
  id: "red_in_post",
  topic: "grading",
  interaction: "single_choice",
  levels: ["beginner", "working", "expert"],
  make({ draw, level, say, show }) {
    const wanted = draw.pick(KEYS);
    const water = draw.pick(WATERS);
    const depth_m = draw.pick(DEPTHS_M);
    // Experts must see that a filter, well exposed, does not take red from the sensor.
    const filtered = level === "expert";
    const scene = byDay(water, SUN_DEG, depth_m);
    const asked = filtered
      ? { ...scene, filter_kind: "red" as const, filter_density: FILTER_DENSITY }
      : scene;
    const recording = redRecordedAt(asked).depths[0]?.recordings.find(
      (r) => r.recording === (filtered ? "filter_best_exposure" : "no_filter"),
    );
    if (!recording) return undefined;
    const signal = recording.red_light_signal_to_noise;
    const plain = redRecordedAt(scene).depths[0].recordings.find((r) => r.recording === "no_filter");
    const key = fate(signal);
    if (key !== wanted) return undefined;
    const text = say.grading.red_in_post;
    const place = {
      scene: say.common.scene({ water: say.common.water[water], sun: show.deg(SUN_DEG) }),
      depth: show.m(depth_m),
    };
    return {
      given: { water, sun_deg: SUN_DEG, depth_m, filter_density: filtered ? FILTER_DENSITY : 0 },
      stem: filtered
        ? text.filterStem({
            ...place,
            density: show.density(FILTER_DENSITY),
            snr: show.fixed(plain?.red_light_signal_to_noise.likely ?? 0, 1),
          })
        : text.stem({ ...place, snr: show.fixed(signal.likely, 1) }),
      answer: {
        interaction: "single_choice",
        options: KEYS.map((value) => ({
          value,
          text: draw.pick(text.option[value]),
          right: value === key,
          ...(value === key ? {} : { misconception: MISTAKE[value] }),
        })),
      },
      steps: [
        {
          operation: level === "beginner" ? "compare" : "judge",
          text: text.signal({
            snr: show.fixed(signal.likely, 1),
            low: show.fixed(signal.low, 1),
            high: show.fixed(signal.high, 1),
          }),
        },
        { operation: "recall", text: text.last[key] },
      ],
      sources: ["camera_recording", "mean_sensor", "jerlov_1976"],
      basis: "computed",
    };
  },
};
