/**
 * How much of the light at a depth falls on a card and on a solid subject, over the downwelling irradiance of deep water.
 *
 * A solid subject is taken as what a dome of an incident-light meter in its place receives: the cardioid (1 + cos)/2 about the
 * axis to the camera (ISO 2720:1974). With scalar irradiance E0 and net irradiance E that is (E0 - E.n)/2, exact. A card is a
 * plane across that axis: the sun's beam by its cosine, and of the rest of the field what faces it and its back get together (level
 * and upright known, between them by the squared sine) and, exactly, their difference, the net irradiance along the axis.
 * Light from a matt floor is even over the lower half of the field: an upright plane gets half of it (view factor of an unbounded
 * level floor, exact), and its scalar irradiance is twice its upwelling irradiance.
 */
import type { LightField } from "./light-field.js";
import type { FloorLight } from "./sea-floor.js";

/** Which way the axis from the subject to the camera points. */
export interface Axis {
  /** Cosine of the angle to the sun, seen from above: 1 with the sun behind the camera; any direction alike when left out. */
  cosToSun?: number;
  /** Sine of its height over the level: above 0 where the camera looks down. */
  upSine: number;
}

/** Parts that each err by a few percent may leave less than nothing where they nearly cancel: over a black floor, facing down. */
const LEAST = 1e-4;

const NO_FLOOR: FloorLight = { upwelling: 0, gain: 1 };

/** Light on a solid subject, as a dome receptor facing the camera meters it. */
export function domeLight(
  field: LightField,
  { cosToSun = 0, upSine }: Axis,
  { upwelling, gain }: FloorLight = NO_FLOOR,
): number {
  const level = Math.sqrt(1 - upSine * upSine);
  const scalar = field.scalar + 2 * upwelling;
  const down = 1 - field.upwelling - upwelling;
  return gain * Math.max(LEAST * field.scalar, (scalar + field.net * cosToSun * level + down * upSine) / 2);
}

/** Mean over a turn of what a plane gets of a beam: max(0, across cos + along). */
function beamMean(across: number, along: number): number {
  if (along >= across) return along;
  if (along <= -across) return 0;
  return (Math.sqrt(across * across - along * along) + along * Math.acos(-along / across)) / Math.PI;
}

/** Light on a flat card across the axis. @param sunTangent of the sun's angle from the vertical in water */
export function cardLight(
  field: LightField,
  sunTangent: number,
  { cosToSun, upSine }: Axis,
  { upwelling, gain }: FloorLight = NO_FLOOR,
): number {
  const upSquare = upSine * upSine;
  const across = field.net * Math.sqrt(1 - upSquare);
  const along = field.beam * upSine;
  const beam = cosToSun === undefined ? beamMean(across, along) : Math.max(0, across * cosToSun + along);
  const diffuseDown = 1 - field.beam;
  const up = field.upwelling + upwelling;
  const upright = field.upright - (field.beam * sunTangent) / Math.PI + upwelling / 2;
  const bothSides = 2 * upright * (1 - upSquare) + (diffuseDown + up) * upSquare;
  return gain * Math.max(LEAST * field.upright, beam + (bothSides + (diffuseDown - up) * upSine) / 2);
}
