import type { ColourRecoveryReasons } from "@sunfathom/planner";
import type { Texts } from "../../problems/texts.js";
import { shown } from "../format.js";

/** Reasons on colour recovery. */
export const colourRecoveryReasons: Texts<ColourRecoveryReasons, string> = {
  red_record: (p) =>
    `At ${shown(p.depth_m, 1)} m without a filter ${shown(p.share * 100)} % of the red channel's signal is red light above 600 nm; on an 18 % grey that light is ${shown(p.snr, 1)} times the noise: ${p.quality} (for red 21 is excellent, 5.3 acceptable, after ISO 12232).`,
  filter_helps_red: (p) =>
    `At ${shown(p.depth_m, 1)} m the filter adds no red light, but lets red be exposed higher before blue and green clip: red light is ${shown(p.with_snr, 1)} times the noise instead of ${shown(p.without_snr, 1)}.`,
  filter_does_not_help_red: (p) =>
    `At ${shown(p.depth_m, 1)} m the filter gains red next to nothing: it cannot be exposed higher, and with it red light is ${shown(p.with_snr, 1)} times the noise, without it ${shown(p.without_snr, 1)}. A filter helps red only where there is light to spare.`,
  same_settings_no_gain: (p) =>
    `At the same ISO, aperture and shutter a filter never makes red cleaner by more than the green and blue it keeps out of the red channel: ${shown(p.with_snr, 1)} against ${shown(p.without_snr, 1)}.`,
  red_is_gone: (p) =>
    `${p.with_filter ? "With the filter" : "Without a filter"} red light is recorded acceptably down to about ${shown(p.acceptable_m)} m and is lost in the noise from about ${shown(p.gone_m)} m: what was not recorded cannot be brought back afterwards.`,
  red_codes: (p) =>
    `At ${shown(p.depth_m, 1)} m a stop of red around middle grey has ${shown(p.codes_8)} code values in 8 bits and ${shown(p.codes_10)} in 10: fewer than about 20 show as bands when they are stretched.`,
};
