import { type Reason as CodedReason, reasonsOf } from "../codes/coded.js";
import type { ColourRecoveryReasons } from "../codes/colour-recovery.js";
import type { LightReasons } from "../codes/light.js";
import { lastOf } from "../lists/non-empty.js";
import { lightReason } from "../reasons/light-reason.js";
import type { ColourRecoveryAnswer, Recording, RecordingKind } from "../result/colour-recovery.js";
import type { AnswerParts } from "../result/common.js";

type Reason = CodedReason<ColourRecoveryReasons & LightReasons>;

const reason = reasonsOf<ColourRecoveryReasons>();

/** A filter helps red where it lets red be exposed higher by more than this factor. */
const HELPS_FROM = 1.05;

export function recoveryReasons(answer: Omit<ColourRecoveryAnswer, keyof AnswerParts<unknown>>): Reason[] {
  const deepest = lastOf(answer.depths);
  const of = (kind: RecordingKind): Recording | undefined =>
    deepest.recordings.find(({ recording }) => recording === kind);
  const { depth_m } = deepest;
  const bare = of("no_filter");
  const best = of("filter_best_exposure");
  const same = of("filter_same_settings");
  const reasons: Reason[] = [];
  if (!bare) return reasons;
  const without_snr = bare.red_light_signal_to_noise.likely;
  reasons.push(
    reason("red_record", "computed", {
      depth_m,
      share: bare.red_above_600_nm_share,
      quality: bare.red_quality,
      snr: without_snr,
    }),
  );
  if (best) {
    const with_snr = best.red_light_signal_to_noise.likely;
    const isExposedHigher = best.red_electrons > HELPS_FROM * bare.red_electrons;
    const code =
      isExposedHigher && best.red_quality !== "gone" ? "filter_helps_red" : "filter_does_not_help_red";
    reasons.push(reason(code, "computed", { depth_m, without_snr, with_snr }));
  }
  if (same) {
    const with_snr = same.red_light_signal_to_noise.likely;
    reasons.push(reason("same_settings_no_gain", "computed", { with_snr, without_snr }));
  }
  reasons.push(
    reason("red_codes", "judgement", {
      depth_m,
      codes_8: bare.red_codes_per_stop_8_bit,
      codes_10: bare.red_codes_per_stop_10_bit,
    }),
  );
  const gone = [
    [false, answer.red_acceptable_to_without_filter_depth_m, answer.red_gone_from_without_filter_depth_m],
    [true, answer.red_acceptable_to_with_filter_depth_m, answer.red_gone_from_with_filter_depth_m],
  ] as const;
  for (const [with_filter, acceptable, lost] of gone) {
    if (!acceptable || !lost) continue;
    reasons.push(
      reason("red_is_gone", "computed", {
        with_filter,
        acceptable_m: acceptable.likely,
        gone_m: lost.likely,
      }),
    );
  }
  const trusted = answer.red_trusted_to_depth_m;
  if (trusted !== undefined && depth_m > trusted) {
    reasons.push(lightReason("red_not_only_transmitted", "computed", { depth_m: trusted }));
  }
  return reasons;
}
