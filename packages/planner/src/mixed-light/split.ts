/**
 * How differently two lights colour a grey: the camera is balanced to one, and the other is looked at through that balance at
 * equal lightness, so that only colour counts.
 */
import { deltaE00, labOf, type Spectrum, type Xyz } from "@sunfathom/optics";
import { WHITE_D65 } from "../camera/d65.js";
import { apply, type Vector3 } from "../camera/matrix.js";
import { rawOf, type SensorProfile } from "../camera/sensor-profile.js";

const GREY_LUMINANCE = 0.18;

/** CIEDE2000 between a grey lit by `light` and one lit by `balancedTo`, after balancing to the latter. */
export function splitDeltaE00(profile: SensorProfile, balancedTo: Spectrum, light: Spectrum): number {
  const white = rawOf(profile, balancedTo);
  const seen = rawOf(profile, light);
  // Raw values of D65 white, onto which the balance maps its own white.
  const neutral = profile.d65White;
  const balanced: Vector3 = [
    (seen[0] / white[0]) * neutral[0],
    (seen[1] / white[1]) * neutral[1],
    (seen[2] / white[2]) * neutral[2],
  ];
  const grey = atLuminance(apply(profile.daylightMatrix, neutral));
  return deltaE00(
    labOf(grey, WHITE_D65),
    labOf(atLuminance(apply(profile.daylightMatrix, balanced)), WHITE_D65),
  );
}

const atLuminance = ([X, Y, Z]: Vector3): Xyz => [
  (X / Y) * GREY_LUMINANCE,
  GREY_LUMINANCE,
  (Z / Y) * GREY_LUMINANCE,
];

/** How many stops more red than green `light` holds, seen from a balance to `balancedTo`. */
export function redExcessStops(profile: SensorProfile, balancedTo: Spectrum, light: Spectrum): number {
  const white = rawOf(profile, balancedTo);
  const seen = rawOf(profile, light);
  return Math.log2(seen[0] / white[0] / (seen[1] / white[1]));
}
