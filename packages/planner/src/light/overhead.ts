import { iceTransmittance, multiply, type Spectrum, scale, type UnderwaterDaylight } from "@sunfathom/optics";
import type { Scene } from "../scene/scene.js";

/** What of open water's daylight comes in under each, where the caller does not say: from memory, a factor of two either way. */
const OPEN_SHARE = { overhang: 0.5, cavern: 0.1, wreck: 0.02 } as const;
const ICE_M = 0.5;
const SNOW_M = 0;
/** Path cosine of light that comes from all sides: that of an even sky. */
const SCATTERED_MU0 = 0.85;

/** How little is known of what comes through, as a standard deviation of its logarithm: openings named, measured, and ice. From memory. */
const NAMED_SIGMA_LN = Math.LN2;
const GIVEN_SIGMA_LN = 0.3;
const ICE_SIGMA_LN = 0.5;

/** Share of open water's daylight that is left under what lies over the diver: the same at all wavelengths but under ice. */
function shareUnder({
  overhead,
  daylight_open_share,
  ice_thickness_m,
  snow_thickness_m,
}: Scene): number | Spectrum {
  if (overhead === "ice") return iceTransmittance(ice_thickness_m ?? ICE_M, snow_thickness_m ?? SNOW_M);
  if (overhead === "overhang" || overhead === "cavern" || overhead === "wreck")
    return daylight_open_share ?? OPEN_SHARE[overhead];
  return 1;
}

/** Daylight under what lies over the diver: of the sun's beam nothing is left, it comes scattered, from the opening or out of the ice. */
export function underOverhead(below: UnderwaterDaylight, scene: Scene): UnderwaterDaylight {
  const share = shareUnder(scene);
  const downwelling =
    typeof share === "number" ? scale(below.downwelling, share) : multiply(below.downwelling, share);
  return { ...below, downwelling, directShare: 0, mu0: SCATTERED_MU0 };
}

export const overheadSigma = ({ overhead, daylight_open_share }: Scene): number =>
  overhead === "ice" ? ICE_SIGMA_LN : daylight_open_share === undefined ? NAMED_SIGMA_LN : GIVEN_SIGMA_LN;
