import {
  CHART_PATCHES,
  illuminant,
  integrateProduct,
  integrateThree,
  multiply,
  perLumen,
  type Sensor,
  type Spectrum,
} from "@sunfathom/optics";
import { xyzUnderD65 } from "./d65.js";
import { fitMatrix, type Matrix3, type Vector3 } from "./matrix.js";
import { rememberFor } from "./remember.js";

/** A sensor with what is computed from it once. */
export interface SensorProfile {
  sensor: Sensor;
  /** Green response to one lumen of D55: the unit in which all channels are counted (see `rawOf`). */
  unit: number;
  /** Per patch of the chart, sensitivity times reflectance of red, green and blue. */
  patchResponses: readonly (readonly [Spectrum, Spectrum, Spectrum])[];
  /** Colour matrix from raw to XYZ, fitted to the chart under D65, as makers do for daylight. */
  daylightMatrix: Matrix3;
  /** Raw values of a white surface under D65. */
  d65White: Vector3;
}

/**
 * Red, green and blue response to a spectral irradiance in W m^-2 nm^-1, in lux as the green channel counts it in daylight: there
 * it reads the photometric exposure, and ISO 12232 says where it saturates.
 */
export function rawOf(
  { sensor, unit }: Pick<SensorProfile, "sensor" | "unit">,
  irradiance: Spectrum,
): Vector3 {
  const [red, green, blue] = integrateThree(irradiance, [sensor.red, sensor.green, sensor.blue]);
  return [red / unit, green / unit, blue / unit];
}

function profileOf(sensor: Sensor): SensorProfile {
  const unit = integrateProduct(perLumen(illuminant("D55")), sensor.green);
  const light = illuminant("D65");
  const patchResponses = CHART_PATCHES.map(
    ({ reflectance }) =>
      [
        multiply(reflectance, sensor.red),
        multiply(reflectance, sensor.green),
        multiply(reflectance, sensor.blue),
      ] as const,
  );
  const daylightMatrix = fitMatrix(
    CHART_PATCHES.map(({ reflectance }) => ({
      from: rawOf({ sensor, unit }, multiply(light, reflectance)),
      to: xyzUnderD65(reflectance),
      weight: 1,
      variance: [0, 0, 0],
    })),
  );
  return {
    sensor,
    unit,
    patchResponses,
    daylightMatrix,
    d65White: rawOf({ sensor, unit }, light),
  };
}

/** The profile of a sensor, by all of its curves. */
export const sensorProfile = rememberFor(profileOf);
