import {
  illuminant,
  integrateProduct,
  integrateTriple,
  multiply,
  type Spectrum,
  scale,
  Y_BAR,
} from "@sunfathom/optics";
import { lampLightAt, towardsCamera, type Underwater, uprightDaylightAt } from "../light/underwater.js";
import type { Stage } from "./merit.js";

/** Luminance of open water, seen level, against a white upright subject in the same daylight: from memory of measured fields. */
const BACKGROUND_LUMINANCE = 0.3;

/** Colour of open water as if it were a surface: scattering over beam attenuation (Akkaynak & Treibitz 2018), scaled. */
function backgroundColour(world: Underwater): Spectrum {
  const { scattering_per_m, beam_attenuation_per_m } = world.water;
  const ratio = scattering_per_m.map((b, i) => b / beam_attenuation_per_m[i]);
  const light = illuminant("D65");
  const luminance = integrateProduct(multiply(light, ratio), Y_BAR) / integrateProduct(light, Y_BAR);
  return ratio.map((r) => (r * BACKGROUND_LUMINANCE) / luminance);
}

/**
 * Subject and open water at a depth, as their light arrives at the lens.
 *
 * Only the hue of the open water is judged, not the haze that brightens it: its light is dimmed as the subject's is on the way to
 * the camera, and where lamps outshine it, it is meant to look as much darker as it is.
 */
export function stageAt(world: Underwater, depth_m: number): Stage {
  const daylight = uprightDaylightAt(world, depth_m);
  const lamps = lampLightAt(world);
  const path = towardsCamera(world);
  const subject = daylight.map((e, i) => (e + lamps[i]) * path[i]);
  if (!world.daylight) return { subject };
  const throughWater = integrateTriple(daylight, path, Y_BAR) / integrateProduct(daylight, Y_BAR);
  const light = scale(daylight, throughWater);
  const againstSubject = integrateProduct(light, Y_BAR) / integrateProduct(subject, Y_BAR);
  return { subject, background: { light, colour: backgroundColour(world), againstSubject } };
}
