/**
 * The cast that a grey takes when the camera is balanced to one light and looks at another: judged at equal lightness, so that
 * only colour counts.
 */
import { deltaE00, labOf, type Spectrum, type Xyz } from "@sunfathom/optics";
import { WHITE_D65 } from "./d65.js";
import { apply, type Vector3 } from "./matrix.js";
import { rawOf, type SensorProfile } from "./sensor-profile.js";

const GREY_LUMINANCE = 0.18;

const atGreyLuminance = ([X, Y, Z]: Vector3): Xyz => [
  (X / Y) * GREY_LUMINANCE,
  GREY_LUMINANCE,
  (Z / Y) * GREY_LUMINANCE,
];

/** CIEDE2000 between a neutral grey and one that reads `seen` under a balance that makes `balancedTo` neutral (both raw). */
export function castOfRaw(profile: SensorProfile, balancedTo: Vector3, seen: Vector3): number {
  const { d65White, daylightMatrix } = profile;
  const balanced: Vector3 = [
    (seen[0] / balancedTo[0]) * d65White[0],
    (seen[1] / balancedTo[1]) * d65White[1],
    (seen[2] / balancedTo[2]) * d65White[2],
  ];
  const neutral = labOf(atGreyLuminance(apply(daylightMatrix, d65White)), WHITE_D65);
  return deltaE00(neutral, labOf(atGreyLuminance(apply(daylightMatrix, balanced)), WHITE_D65));
}

/** The same for two lights, W m^-2 nm^-1 in any common scale. */
export const castBetween = (profile: SensorProfile, balancedTo: Spectrum, seen: Spectrum): number =>
  castOfRaw(profile, rawOf(profile, balancedTo), rawOf(profile, seen));

/** How many stops more red than green `seen` holds, under a balance to `balancedTo`. */
export function redExcessStops(profile: SensorProfile, balancedTo: Spectrum, seen: Spectrum): number {
  const white = rawOf(profile, balancedTo);
  const light = rawOf(profile, seen);
  return Math.log2(light[0] / white[0] / (light[1] / white[1]));
}
