import type { ColourRecoveryReasons } from "@sunfathom/planner";
import type { Texts, TextUnits } from "../../problems/texts.js";
import { depth, depthNumber, shown } from "../format.js";

/** Down to where red is good, and from where it is lost: at the surface already, or both at one depth. */
function reach(p: ColourRecoveryReasons["red_is_gone"], u?: TextUnits): string {
  const [good, gone] = [depthNumber(p.acceptable_m, u), depthNumber(p.gone_m, u)];
  if (gone === "0") return "is lost in the noise almost from the surface down";
  if (good === "0")
    return `is weak from the surface down and lost in the noise from about ${depth(p.gone_m, u)}`;
  return `records acceptably down to about ${depth(p.acceptable_m, u)} and is lost in the noise ${good === gone ? "below that" : `from about ${depth(p.gone_m, u)}`}`;
}

/** Reasons on colour recovery. */
export const colourRecoveryReasons: Texts<ColourRecoveryReasons, string> = {
  red_record: (p, u) =>
    `At ${depth(p.depth_m, u)} without a filter, ${shown(p.share * 100)} % of the red channel's signal is red light above 600 nm. On an 18 % grey that light is ${shown(p.snr, 1)} times the noise: ${p.quality}. For red, 21 is excellent and 5.3 acceptable (after ISO 12232).`,
  filter_helps_red: (p, u) =>
    `At ${depth(p.depth_m, u)} the filter adds no red light, but you can expose red higher before blue and green clip. Red light is ${shown(p.with_snr, 1)} times the noise instead of ${shown(p.without_snr, 1)}.`,
  filter_does_not_help_red: (p, u) =>
    `At ${depth(p.depth_m, u)} the filter hardly helps red: there is no light to expose it higher. Red light is ${shown(p.with_snr, 1)} times the noise with the filter and ${shown(p.without_snr, 1)} without. A filter helps red only where there is light to spare.`,
  same_settings_no_gain: (p) =>
    `At the same ISO, aperture and shutter a filter hardly cleans up red. It only keeps some green and blue out of the red channel: red light is ${shown(p.with_snr, 1)} times the noise with it, ${shown(p.without_snr, 1)} without.`,
  red_is_gone: (p, u) =>
    `${p.with_filter ? "With the filter" : "Without a filter"} red ${reach(p, u)}. No edit brings back red that was not recorded.`,
  red_codes: (p, u) =>
    `At ${depth(p.depth_m, u)} a stop of red around middle grey has ${shown(p.codes_8)} code values in 8 bits and ${shown(p.codes_10)} in 10. With fewer than about 20, bands show when you stretch them.`,
};
