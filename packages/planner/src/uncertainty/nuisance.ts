import { type FilterShape, REFERENCE_MU0 } from "@sunfathom/optics";

/** What the model does not know exactly: every evaluation runs on one setting of these. */
export interface Nuisance {
  /** Multiplies diffuse attenuation above pure water. */
  kdRemainderScale: number;
  /** Multiplies particle scattering. */
  scatteringScale: number;
  /** Share of scattering that counts as lost on a short path, 0 to 1. */
  scatterLost: number;
  /** Multiplies daylight at the surface. */
  daylightScale: number;
  /** Multiplies what comes through what lies over the diver. */
  overheadScale: number;
  /** Path cosine of light for which attenuation is described, 0 to 1. */
  referenceMu0: number;
  /** Which way the subject faces within what is said of it, in standard deviations; brighter above 0. */
  facing: number;
  /** Multiplies the share of daylight that falls on the subject. */
  uprightScale: number;
  /** Multiplies what the sea floor reflects. */
  floorScale: number;
  /** Multiplies the intensity of the lamps. */
  lampIntensityScale: number;
  /** How far the lamps are aimed off the subject, as a standard normal deviate of it; farther above 0. */
  lampAim: number;
  /** Multiplies how far the lamps stand from the line of sight. */
  lampOffsetScale: number;
  /** How the filter at hand differs from the assumed shape. */
  filterShape: FilterShape;
  /** How far the density of a filter that is known by pictures of a card is from what they tell, in its standard errors. */
  filterDensityErrors: number;
  /** Cross-talk of the red channel, in standard deviations between cameras. */
  crosstalkSd: number;
  /** Multiplies the sensor's full-well capacity. */
  fullWellScale: number;
}

export const NOMINAL: Nuisance = {
  kdRemainderScale: 1,
  scatteringScale: 1,
  scatterLost: 0.5,
  daylightScale: 1,
  overheadScale: 1,
  referenceMu0: REFERENCE_MU0,
  facing: 0,
  uprightScale: 1,
  floorScale: 1,
  lampIntensityScale: 1,
  lampAim: 0,
  lampOffsetScale: 1,
  filterShape: {},
  filterDensityErrors: 0,
  crosstalkSd: 0,
  fullWellScale: 1,
};
