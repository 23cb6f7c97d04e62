/**
 * Apparent place of the sun among the stars, and how far the sky has turned, degrees; geocentric, equator of date.
 *
 * The solar position algorithm of NREL with its series cut: of the Earth's heliocentric longitude the terms from 2e-6 rad
 * on, of nutation the two largest, the Earth's latitude (below 1e-4 degree) left out, the distance to the sun taken as its
 * mean where aberration needs it. What is cut sums up to less than 3e-3 degree at the very worst, and to some 5e-4 degree
 * as a rule, a two-hundredth of the sun's own width.
 * Domain: the years 1900 to 2100.
 * Sources: Reda & Andreas 2004, NREL/TP-560-34302, tables A4.2 and A4.3 and section 3; for the drift of the Earth's
 * rotation the parabola for 2005 to 2050 of Espenak & Meeus 2006, NASA/TP-2006-214141, which misses less than 100 s, or
 * 1.1e-3 degree, from 1900 to 2100 (the parabola from memory; the test holds the whole to two libraries).
 */

export interface SunCoordinates {
  /** Ecliptic longitude, with aberration, from the true equinox of date; 0 to 360. */
  longitude_deg: number;
  declination_deg: number;
  /** Hour angle at Greenwich, westward; 0 to 360. */
  greenwich_hour_angle_deg: number;
}

const RADIAN = Math.PI / 180;
const MS_PER_DAY = 86_400_000;
const DAYS_PER_CENTURY = 36_525;
/** Noon of 1 January 2000, from which the series count. */
const EPOCH_MS = Date.UTC(2000, 0, 1, 12);
/** What the finite speed of light sets the sun back by, at its mean distance. */
const ABERRATION_DEG = 20.4898 / 3600;

/** Terms of the heliocentric longitude, 1e-8 rad: amplitude, phase and rate (rad per 1000 years), by powers of time. */
const LONGITUDE_TERMS: readonly (readonly (readonly [number, number, number])[])[] = [
  [
    [175347046, 0, 0],
    [3341656, 4.6692568, 6283.07585],
    [34894, 4.6261, 12566.1517],
    [3497, 2.7441, 5753.3849],
    [3418, 2.8289, 3.5231],
    [3136, 3.6277, 77713.7715],
    [2676, 4.4181, 7860.4194],
    [2343, 6.1352, 3930.2097],
    [1324, 0.7425, 11506.7698],
    [1273, 2.0371, 529.691],
    [1199, 1.1096, 1577.3435],
    [990, 5.233, 5884.927],
    [902, 2.045, 26.298],
    [857, 3.508, 398.149],
    [780, 1.179, 5223.694],
    [753, 2.533, 5507.553],
    [505, 4.583, 18849.228],
    [492, 4.205, 775.523],
    [357, 2.92, 0.067],
    [317, 5.849, 11790.629],
    [284, 1.899, 796.298],
    [271, 0.315, 10977.079],
    [243, 0.345, 5486.778],
    [206, 4.806, 2544.314],
    [205, 1.869, 5573.143],
    [202, 2.458, 6069.777],
  ],
  [
    [628331966747, 0, 0],
    [206059, 2.678235, 6283.07585],
    [4303, 2.6351, 12566.1517],
  ],
  [
    [52919, 0, 0],
    [8720, 1.0721, 6283.0758],
  ],
];

/** Apparent coordinates of the sun at an instant. */
export function sunCoordinates(instant: Date): SunCoordinates {
  const days = (instant.getTime() - EPOCH_MS) / MS_PER_DAY;
  // Clocks follow the Earth's rotation, the planets do not.
  const years = days / 365.25;
  const drift_s = 62.92 + 0.32217 * years + 0.005589 * years ** 2;
  const centuries = (days + drift_s / 86_400) / DAYS_PER_CENTURY;

  const node = (125.04452 - 1934.136261 * centuries) * RADIAN;
  const twiceSun = 2 * (280.4665 + 36_000.7698 * centuries) * RADIAN;
  const nutation_deg = (-17.2 * Math.sin(node) - 1.32 * Math.sin(twiceSun)) / 3600;
  const obliquity =
    (23.439291 - 0.0130042 * centuries + (9.2 * Math.cos(node) + 0.57 * Math.cos(twiceSun)) / 3600) * RADIAN;

  // The sun is seen from the Earth in the direction opposite to that of the Earth from the sun.
  const longitude_deg = turn(earthLongitude(centuries / 10) / RADIAN + 180 + nutation_deg - ABERRATION_DEG);
  const longitude = longitude_deg * RADIAN;
  const rightAscension_deg =
    Math.atan2(Math.sin(longitude) * Math.cos(obliquity), Math.cos(longitude)) / RADIAN;
  const sidereal_deg =
    280.46061837 + 360.98564736629 * days + 0.000387933 * centuries ** 2 + nutation_deg * Math.cos(obliquity);
  return {
    longitude_deg,
    declination_deg: Math.asin(Math.sin(obliquity) * Math.sin(longitude)) / RADIAN,
    greenwich_hour_angle_deg: turn(sidereal_deg - rightAscension_deg),
  };
}

/** Heliocentric longitude of the Earth from the mean equinox of date, rad. */
function earthLongitude(millennia: number): number {
  let longitude = 0;
  LONGITUDE_TERMS.forEach((terms, power) => {
    let sum = 0;
    for (const [amplitude, phase, rate] of terms) sum += amplitude * Math.cos(phase + rate * millennia);
    longitude += sum * millennia ** power;
  });
  return longitude * 1e-8;
}

function turn(angle_deg: number): number {
  return angle_deg - 360 * Math.floor(angle_deg / 360);
}
