import { add, GRID_SIZE, integrateProduct, multiply, type Spectrum, scale, Y_BAR } from "@sunfathom/optics";
import { valueAt } from "../lists/non-empty.js";
import { once } from "../once.js";
import { DOME_AS_FLAT, subjectDaylightAt } from "./daylight-at-depth.js";
import { viewAt } from "./haze.js";
import { METER_GREY, pictureMean } from "./picture-mean.js";
import { type AtDepth, lampLightAt, PORT, type Underwater } from "./underwater.js";

/** What the camera looks at: how each target is lit, as it arrives at the lens through the port. */
export interface Stage {
  /** Light of a perfect white subject behind the port, W m^-2 nm^-1 (times 1/pi per steradian). */
  subject: Spectrum;
  /** Open water behind it; absent in the dark. */
  background?: Background;
  /** Mean light of the whole picture in the same unit; without daylight that of a grey subject. */
  whole: () => Spectrum;
}

interface Background {
  /** Its light at the lens, in the subject's unit. */
  openWater: Spectrum;
  /** The part of it that lies as haze over the subject. */
  veil: Spectrum;
  /** Its colour as if it were a surface in the daylight on the subject. */
  colour: Spectrum;
  /** Luminance of the daylight on the subject over all light on it: 1 without lamps. */
  againstSubject: number;
}

/** Light over light, wavelength by wavelength; 0 where there is none. */
function ratio(light: Spectrum, reference: Spectrum): Spectrum {
  const out = new Float64Array(GRID_SIZE);
  for (let i = 0; i < GRID_SIZE; i++) {
    const below = valueAt(reference, i);
    out[i] = below > 0 ? valueAt(light, i) / below : 0;
  }
  return out;
}

/**
 * Subject, haze and open water at a depth, as their light arrives at the lens. The subject is a solid one, lit as a dome receptor
 * meters it. Open water is lit by daylight alone: where lamps outshine it on the subject, it is meant to look as much darker as it is.
 */
export const stageAt = (world: Underwater, depth_m: number): Stage =>
  world.remembered(STAGE, depth_m, () => staged(world, depth_m));

const STAGE: AtDepth<Stage> = {};

function staged(world: Underwater, depth_m: number): Stage {
  const daylight = scale(subjectDaylightAt(world, depth_m), DOME_AS_FLAT);
  const lit = add(daylight, scale(lampLightAt(world), DOME_AS_FLAT));
  const { openWater: water, path, haze } = viewAt(world, depth_m);
  const subject = scale(multiply(lit, path), PORT);
  if (!world.daylight) return { subject, whole: () => scale(subject, METER_GREY) };
  const againstSubject = integrateProduct(daylight, Y_BAR) / integrateProduct(lit, Y_BAR);
  return {
    subject,
    background: {
      openWater: scale(water, PORT),
      veil: scale(haze, PORT),
      colour: ratio(water, daylight),
      againstSubject,
    },
    whole: once(() => scale(pictureMean(world, lit, depth_m), PORT)),
  };
}
