/**
 * Field of view and entrance pupil of a lens, from focal length and format. Exact for the ideal projections: rectilinear
 * r = f tan a, and equisolid r = 2 f sin(a/2), which most fisheyes follow closely (Kingslake 1989, A History of the
 * Photographic Lens, from memory). Lengths in mm, angles in degrees; a is the angle from the axis in air.
 */

export type Projection = "rectilinear" | "equisolid";

const RADIAN = Math.PI / 180;

/** Distance of an image point from the picture's centre, in focal lengths; `half_deg` 0 to below 90 where rectilinear. */
export const imageHeight = (projection: Projection, half_deg: number): number =>
  projection === "rectilinear" ? Math.tan(half_deg * RADIAN) : 2 * Math.sin((half_deg * RADIAN) / 2);

/**
 * Full field over the diagonal of the format; undefined where the corner lies outside the image circle, which for the
 * equisolid projection ends at 2 f from the centre.
 */
export function fieldOfView_deg(
  projection: Projection,
  focalLength_mm: number,
  diagonal_mm: number,
): number | undefined {
  const height = diagonal_mm / 2 / focalLength_mm;
  if (projection === "rectilinear") return (2 * Math.atan(height)) / RADIAN;
  return height > 2 ? undefined : (4 * Math.asin(height / 2)) / RADIAN;
}

/** Focal length that puts the edge of a field into the corner of a format; the inverse of `fieldOfView_deg`. */
export const focalLength_mm = (projection: Projection, field_deg: number, diagonal_mm: number): number =>
  diagonal_mm / 2 / imageHeight(projection, field_deg / 2);

/** Radius of the entrance pupil: f / 2N, by definition of the f-number. */
export const entrancePupilRadius_mm = (focal_mm: number, fNumber: number): number => focal_mm / (2 * fNumber);
