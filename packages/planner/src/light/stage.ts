import {
  add,
  illuminant,
  integrateProduct,
  integrateTriple,
  multiply,
  openWaterColour,
  type Spectrum,
  scale,
  veilingLight,
  Y_BAR,
} from "@sunfathom/optics";
import { lampLightAt, PORT, towardsCamera, type Underwater, uprightDaylightAt } from "./underwater.js";

/** What the camera looks at: how each target is lit, as it arrives at the lens through the port. */
export interface Stage {
  /** Light of a perfect white subject behind the port, W m^-2 nm^-1 (times 1/pi per steradian). */
  subject: Spectrum;
  /** Open water behind it; absent in the dark. */
  background?: Background;
}

interface Background {
  /** Its light at the lens, in the subject's unit. */
  openWater: Spectrum;
  /** The part of it that lies as haze over the subject. */
  veil: Spectrum;
  /** Its colour as if it were a surface, 0 to 1. */
  colour: Spectrum;
  /** Luminance of the daylight on the subject over all light on it: 1 without lamps. */
  againstSubject: number;
}

/** Luminance of open water, seen level, against a white upright subject in the same daylight: from memory of measured fields. */
const OPEN_WATER_LUMINANCE = 0.3;
const D65 = illuminant("D65");

/** Reflectance-like colour of open water. */
function backgroundColour(world: Underwater): Spectrum {
  const ratio = openWaterColour(world.water.scattering_per_m, world.water.beam_attenuation_per_m);
  const luminance = integrateTriple(D65, ratio, Y_BAR) / integrateProduct(D65, Y_BAR);
  return scale(ratio, OPEN_WATER_LUMINANCE / luminance);
}

/**
 * Subject, haze and open water at a depth, as their light arrives at the lens. Open water is lit by daylight alone: where lamps
 * outshine it on the subject, it is meant to look as much darker as it is.
 */
export function stageAt(world: Underwater, depth_m: number): Stage {
  const daylight = uprightDaylightAt(world, depth_m);
  const lit = add(daylight, lampLightAt(world));
  const path = towardsCamera(world);
  const subject = scale(multiply(lit, path), PORT);
  if (!world.daylight) return { subject };
  const colour = backgroundColour(world);
  const openWater = scale(multiply(daylight, colour), PORT);
  const againstSubject = integrateProduct(daylight, Y_BAR) / integrateProduct(lit, Y_BAR);
  return { subject, background: { openWater, veil: veilingLight(openWater, path), colour, againstSubject } };
}
