/**
 * A flat window between water and a lens in air. Snell, exact, for a thin window (its glass only shifts rays sideways).
 * Angles in degrees from the axis, below 90; fields are full angles.
 */
import { QUAN_FRY_1995 } from "../data/quan-fry-1995.js";
import { interpolate } from "../spectrum/resample.js";
import { refractedAngle_deg, WATER_INDEX } from "../surface/snell-fresnel.js";
import { imageHeight, type Projection } from "./lens-field.js";

/** Blue and red at which colours are taken to part at the edge of the picture. */
const BLUE_NM = 450;
const RED_NM = 650;

const RADIAN = Math.PI / 180;

/** Field in water of a lens that sees `fieldInAir_deg` (0 to 180): 2 asin(sin(field / 2) / n). */
export const flatPortField_deg = (fieldInAir_deg: number, index = WATER_INDEX): number =>
  2 * refractedAngle_deg(fieldInAir_deg / 2, index);

/** How much larger things appear near the axis than in air from the same place: n. */
export const flatPortMagnification = (index = WATER_INDEX): number => index;

/** Distance behind the port at which a thing appears that stands `distance` away from it, near the axis: d / n. */
export const apparentDistance = (distance: number, index = WATER_INDEX): number => distance / index;

/**
 * Lateral colour at an angle in air: how much farther from the picture's centre blue (450 nm) falls than red (650 nm), in
 * percent of the distance from the centre. Indices of sea water from Quan & Fry 1995. Undefined within about 6 degrees of
 * grazing, where blue no longer leaves the water.
 */
export function lateralColour_percent(
  half_deg: number,
  projection: Projection = "rectilinear",
): number | undefined {
  const { wavelength_nm, index_vs_air } = QUAN_FRY_1995;
  const sineInWater = Math.sin(half_deg * RADIAN) / WATER_INDEX;
  const heightAt = (nm: number): number | undefined => {
    const sine = interpolate(wavelength_nm, index_vs_air, nm) * sineInWater;
    return sine >= 1 ? undefined : imageHeight(projection, Math.asin(sine) / RADIAN);
  };
  const blue = heightAt(BLUE_NM);
  const red = heightAt(RED_NM);
  if (blue === undefined || red === undefined) return undefined;
  return (100 * (blue - red)) / imageHeight(projection, half_deg);
}
