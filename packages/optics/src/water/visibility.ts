/**
 * How far a black target is seen horizontally by daylight, and the beam attenuation that this distance tells.
 *
 * V = 4.8 / c with c near 530 nm, 1/m. Accurate to 10 % on average for a black disc in waters from clear to turbid; what
 * divers call visibility is a guess with another spread on top.
 * Source: Davies-Colley 1988, Measuring water clarity with a black disk, Limnology and Oceanography 33, 616; Zaneveld &
 * Pegau 2003, Robust underwater visibility parameter, Optics Express 11, 2997. Hou, Lee & Weidemann 2007, Optics Express
 * 15, 2791, reach about 4.8/c by modulation transfer.
 */
import { FIRST_NM, STEP_NM } from "../spectrum/grid.js";

const BLACK_DISC_CONSTANT = 4.8;
const VISIBILITY_NM = 530;
export const VISIBILITY_INDEX = (VISIBILITY_NM - FIRST_NM) / STEP_NM;

/** Of the relation: 10 % mean error (Zaneveld & Pegau 2003) taken as the mean of a normal spread. */
const RELATION_SIGMA_LN = 0.125;
/** Of a diver's guess against a black disc. Common practice, no published source. */
const GUESS_SIGMA_LN = 0.25;
/** Standard deviation of ln c at 530 nm when a diver says how far he sees. */
export const VISIBILITY_SIGMA_LN = Math.hypot(RELATION_SIGMA_LN, GUESS_SIGMA_LN);

/** Beam attenuation at 530 nm, 1/m. @param visibility_m above 0. */
export function beamFromVisibility_per_m(visibility_m: number): number {
  return BLACK_DISC_CONSTANT / visibility_m;
}

/** Distance at which a black target is lost, m. @param beam_attenuation_per_m at 530 nm, above 0. */
export function visibilityFromBeam_m(beam_attenuation_per_m: number): number {
  return BLACK_DISC_CONSTANT / beam_attenuation_per_m;
}
