/**
 * Where the sun stands: elevation above the horizon and azimuth from north, degrees, seen from sea level.
 *
 * The apparent place comes from astronomy-engine (topocentric, equator of date, with aberration), chosen because it is
 * maintained, has no dependencies and bundles for browsers; refraction is that of Reda & Andreas.
 * Domain: the years 1900 to 2100, where the drift of the Earth's rotation is known or well foreseen; against the solar
 * position algorithm of NREL it agrees to 1e-3 degree. Outside the domain an OpticsDomainError is thrown.
 * Source of the refraction and of the worked example in the test: Reda & Andreas 2004, Solar position algorithm for
 * solar radiation applications, Solar Energy 76, 577; NREL/TP-560-34302, eq. 42.
 */
import { Body, Equator, Horizon, Observer } from "astronomy-engine";
import { OpticsDomainError } from "../domain-error.js";

export interface SunPosition {
  /** Angle of the sun's centre above the horizon, without air. Negative below it. */
  elevation_unrefracted_deg: number;
  /** The same as seen through standard air: what a photometer at sea level faces. */
  elevation_refracted_deg: number;
  /** Direction of the sun, from north through east, 0 to 360. */
  azimuth_deg: number;
}

export interface SunPlace {
  /** North positive, -90 to 90. */
  latitude_deg: number;
  /** East positive, -180 to 180. */
  longitude_deg: number;
}

const FIRST_YEAR = 1900;
const LAST_YEAR = 2100;
/** Standard air at sea level, for refraction. */
const STANDARD_PRESSURE_HPA = 1013.25;
const STANDARD_TEMPERATURE_C = 15;
/** The sun's radius and the refraction at the horizon (Reda & Andreas): below this no part of it is seen. */
const VANISHES_BELOW_DEG = -(0.26667 + 0.5667);
const RADIAN = Math.PI / 180;

/**
 * What air lifts the sun by, degrees (Reda & Andreas 2004, eq. 42); 0 where no part of the sun is above the horizon.
 * @param elevation_deg without refraction.
 */
export function refraction_deg(
  elevation_deg: number,
  pressure_hPa = STANDARD_PRESSURE_HPA,
  temperature_C = STANDARD_TEMPERATURE_C,
): number {
  if (elevation_deg < VANISHES_BELOW_DEG) return 0;
  const air = (pressure_hPa / 1010) * (283 / (273 + temperature_C));
  return (air * 1.02) / (60 * Math.tan((elevation_deg + 10.3 / (elevation_deg + 5.11)) * RADIAN));
}

function requireWithin(
  code: "latitude_out_of_range" | "longitude_out_of_range",
  value: number,
  limit: number,
): void {
  if (value >= -limit && value <= limit) return;
  const name = code === "latitude_out_of_range" ? "latitude_deg" : "longitude_deg";
  throw new OpticsDomainError(code, `${name} is ${value}; it must lie between -${limit} and ${limit}.`);
}

/**
 * Position of the sun at an instant.
 * @throws OpticsDomainError for a place off the globe, an invalid date, or a year outside 1900 to 2100.
 */
export function sunPosition(place: SunPlace, instant: Date): SunPosition {
  requireWithin("latitude_out_of_range", place.latitude_deg, 90);
  requireWithin("longitude_out_of_range", place.longitude_deg, 180);
  const year = instant.getUTCFullYear();
  if (!(year >= FIRST_YEAR && year <= LAST_YEAR)) {
    const given = Number.isNaN(year) ? "not a date" : `in the year ${year}`;
    throw new OpticsDomainError(
      "instant_out_of_range",
      `The instant is ${given}; the sun's place is given for ${FIRST_YEAR} to ${LAST_YEAR}.`,
    );
  }
  const observer = new Observer(place.latitude_deg, place.longitude_deg, 0);
  const apparent = Equator(Body.Sun, instant, observer, true, true);
  const { altitude, azimuth } = Horizon(instant, observer, apparent.ra, apparent.dec);
  return {
    elevation_unrefracted_deg: altitude,
    elevation_refracted_deg: altitude + refraction_deg(altitude),
    azimuth_deg: azimuth,
  };
}
