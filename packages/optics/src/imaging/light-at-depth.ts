/** Daylight at a depth as a camera meets it, wavelength by wavelength: on a subject, on a card, and in the open water behind. */
import { GRID_SIZE, type Spectrum } from "../spectrum/grid.js";
import { PURE_WATER_SCATTERING_PER_M } from "../water/pure-water.js";
import type { WaterOptics } from "../water/water-optics.js";
import {
  type Coefficients,
  type FieldGeometry,
  lightField,
  openWaterRadiance,
  type Sight,
} from "./light-field.js";
import { type FloorLight, floorLight } from "./sea-floor.js";
import { type Axis, cardLight, domeLight } from "./subject-light.js";

/** A sea floor below the camera. */
export interface Floor {
  reflectance: Spectrum;
  depth_m: number;
}

export interface Look extends Sight {
  axis: Axis;
  /** Deep water when left out. */
  floor?: Floor;
}

/** Over the downwelling irradiance of deep water at that depth, per wavelength. */
export interface LightAtDepth {
  /** On a solid subject, as a dome receptor that faces the camera meters it. */
  subject: Spectrum;
  /** On a flat card across the axis to the camera. */
  card: Spectrum;
  /** Of open water where the camera looks, as radiance times pi. */
  openWater: Spectrum;
  /** On a level surface that faces up: 1 in deep water, more over a pale floor. */
  downwelling: Spectrum;
}

/** Over a black floor closed forms that nearly cancel may leave less than nothing. */
const LEAST = 1e-4;

const RADIAN = Math.PI / 180;

/**
 * @param water its absorption and scattering
 * @param kd_per_m its diffuse attenuation under this sun
 */
export function lightAtDepth(
  geometry: FieldGeometry,
  { absorption_per_m, scattering_per_m }: Pick<WaterOptics, "absorption_per_m" | "scattering_per_m">,
  kd_per_m: Spectrum,
  { axis, floor, ...sight }: Look,
): LightAtDepth {
  const out: LightAtDepth = {
    subject: new Float64Array(GRID_SIZE),
    card: new Float64Array(GRID_SIZE),
    openWater: new Float64Array(GRID_SIZE),
    downwelling: new Float64Array(GRID_SIZE),
  };
  const sunTangent = Math.tan(geometry.sunAngleInWater_deg * RADIAN);
  for (let i = 0; i < GRID_SIZE; i++) {
    const molecules_per_m = PURE_WATER_SCATTERING_PER_M[i];
    const at: Coefficients = {
      absorption_per_m: absorption_per_m[i],
      particles_per_m: scattering_per_m[i] - molecules_per_m,
      molecules_per_m,
      kd_per_m: kd_per_m[i],
    };
    const field = lightField(geometry, at);
    const below: FloorLight | undefined =
      floor &&
      floorLight(
        floor.reflectance[i],
        {
          above_m: floor.depth_m - geometry.depth_m,
          floorDepth_m: floor.depth_m,
          deepReflectance: field.upwelling,
        },
        at,
      );
    out.subject[i] = domeLight(field, axis, below);
    out.card[i] = cardLight(field, sunTangent, axis, below);
    // Light from a floor reaches open water from its side as it does an upright plane.
    const upright = below
      ? below.gain * Math.max(LEAST * field.upright, field.upright + below.upwelling / 2)
      : field.upright;
    out.openWater[i] = openWaterRadiance({ ...field, upright }, at, sight);
    out.downwelling[i] = below?.gain ?? 1;
  }
  return out;
}
