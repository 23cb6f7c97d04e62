/**
 * Where the sun stands: elevation above the horizon and azimuth from north, degrees, seen from sea level.
 *
 * The place among the stars is that of `sunCoordinates`, turned to the horizon, with the sun's parallax; refraction is that
 * of Reda & Andreas.
 * Domain: the years 1900 to 2100, where the drift of the Earth's rotation is known or well foreseen; against the full
 * solar position algorithm of NREL and against an ephemeris it agrees to 3e-3 degree. Outside the domain an
 * OpticsDomainError is thrown.
 * Source: Reda & Andreas 2004, Solar position algorithm for solar radiation applications, Solar Energy 76, 577;
 * NREL/TP-560-34302, eqs. 40 to 46. The worked example in the test is theirs.
 */
import { OpticsDomainError } from "../domain-error.js";
import { sunCoordinates } from "./sun-coordinates.js";

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

const MOST_LATITUDE_DEG = 90;
const MOST_LONGITUDE_DEG = 180;
const FIRST_YEAR = 1900;
const LAST_YEAR = 2100;
/** Standard air at sea level, for refraction. */
const STANDARD_PRESSURE_HPA = 1013.25;
const STANDARD_TEMPERATURE_C = 15;
/** The sun's radius and the refraction at the horizon (Reda & Andreas): below this no part of it is seen. */
const VANISHES_BELOW_DEG = -(0.26667 + 0.5667);
/** How much lower the sun at the horizon is seen from the ground than from the Earth's centre. */
const PARALLAX_DEG = 8.794 / 3600;
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

function requireOnGlobe({ latitude_deg, longitude_deg }: SunPlace): void {
  if (!(Math.abs(latitude_deg) <= MOST_LATITUDE_DEG)) {
    const parameters = { latitude_deg, limit_deg: MOST_LATITUDE_DEG };
    throw new OpticsDomainError({ code: "latitude_out_of_range", parameters });
  }
  if (!(Math.abs(longitude_deg) <= MOST_LONGITUDE_DEG)) {
    const parameters = { longitude_deg, limit_deg: MOST_LONGITUDE_DEG };
    throw new OpticsDomainError({ code: "longitude_out_of_range", parameters });
  }
}

/**
 * Position of the sun at an instant.
 * @throws OpticsDomainError for a place off the globe, an invalid date, or a year outside 1900 to 2100.
 */
export function sunPosition(place: SunPlace, instant: Date): SunPosition {
  requireOnGlobe(place);
  const year = instant.getUTCFullYear();
  if (!(year >= FIRST_YEAR && year <= LAST_YEAR)) {
    const given = Number.isNaN(year) ? {} : { year };
    throw new OpticsDomainError({
      code: "instant_out_of_range",
      parameters: { ...given, first_year: FIRST_YEAR, last_year: LAST_YEAR },
    });
  }
  const { declination_deg, greenwich_hour_angle_deg } = sunCoordinates(instant);
  const latitude = place.latitude_deg * RADIAN;
  const declination = declination_deg * RADIAN;
  const hourAngle = (greenwich_hour_angle_deg + place.longitude_deg) * RADIAN;
  const up =
    Math.sin(latitude) * Math.sin(declination) +
    Math.cos(latitude) * Math.cos(declination) * Math.cos(hourAngle);
  const east = -Math.cos(declination) * Math.sin(hourAngle);
  const north =
    Math.cos(latitude) * Math.sin(declination) -
    Math.sin(latitude) * Math.cos(declination) * Math.cos(hourAngle);
  const geocentric = Math.atan2(up, Math.hypot(east, north));
  const elevation_deg = geocentric / RADIAN - PARALLAX_DEG * Math.cos(geocentric);
  return {
    elevation_unrefracted_deg: elevation_deg,
    elevation_refracted_deg: elevation_deg + refraction_deg(elevation_deg),
    azimuth_deg: (Math.atan2(east, north) / RADIAN + 360) % 360,
  };
}
