import type { RedQuality } from "../result/colour-recovery.js";

/** Reasons on colour recovery. */
export interface ColourRecoveryReasons {
  red_record: { depth_m: number; share: number; quality: RedQuality; snr: number };
  filter_helps_red: { depth_m: number; without_snr: number; with_snr: number };
  filter_does_not_help_red: { depth_m: number; without_snr: number; with_snr: number };
  same_settings_no_gain: { with_snr: number; without_snr: number };
  /** Without the scene's filter, or with it. */
  red_is_gone: { acceptable_m: number; gone_m: number; with_filter: boolean };
  red_codes: { depth_m: number; codes_8: number; codes_10: number };
}
