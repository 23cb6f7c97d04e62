/**
 * Signal over noise of the red light alone: 21 excellent, 5.3 acceptable, below that poor, and gone where it sinks below the noise.
 * ISO 12232 calls a picture excellent at 40 and acceptable at 10, and counts noise of red against luminance 0.53 times (the root
 * of 0.279), since the eye sees it less.
 */
export type RedQuality = "excellent" | "acceptable" | "poor" | "gone";

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
