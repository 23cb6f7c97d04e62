import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { entrancePupilRadius_mm, fieldOfView_deg, focalLength_mm, imageHeight } from "./lens-field.js";

const FULL_FRAME_mm = Math.hypot(36, 24);

describe("field of view of a lens", () => {
  // The diagonal fields that the trade prints for 24 x 36 mm, from memory (common practice, no published source).
  it.each([
    [14, 114],
    [20, 94],
    [24, 84],
    [35, 63],
    [50, 47],
    [85, 28.5],
  ])("%d mm rectilinear sees %d degrees over the diagonal of 24 x 36 mm", (f, printed) => {
    expect(fieldOfView_deg("rectilinear", f, FULL_FRAME_mm)!).toBeCloseTo(printed, -0.3);
  });

  it("15 to 16 mm equisolid sees about 180 degrees corner to corner, as such fisheyes are sold (common practice)", () => {
    // Exact: 2 f sin 45 = 21.63 mm asks for f = 15.30 mm.
    expect(focalLength_mm("equisolid", 180, FULL_FRAME_mm)).toBeCloseTo(15.3, 2);
    expect(fieldOfView_deg("equisolid", 15.2975, FULL_FRAME_mm)!).toBeCloseTo(180, 1);
  });

  it("an equisolid image ends at two focal lengths from the centre", () => {
    expect(fieldOfView_deg("equisolid", 8, 32)).toBe(360);
    expect(fieldOfView_deg("equisolid", 8, FULL_FRAME_mm)).toBeUndefined();
  });

  it("45 degrees from the axis a rectilinear image stands one focal length from the centre", () => {
    expect(imageHeight("rectilinear", 45)).toBeCloseTo(1, 15);
    expect(imageHeight("equisolid", 60)).toBeCloseTo(1, 15);
  });

  it("focal length and field are each other's inverse", () => {
    fc.assert(
      fc.property(
        fc.constantFrom("rectilinear" as const, "equisolid" as const),
        fc.double({ min: 5, max: 170, noNaN: true }),
        fc.double({ min: 4, max: 60, noNaN: true }),
        (projection, field, diagonal) => {
          const f = focalLength_mm(projection, field, diagonal);
          expect(fieldOfView_deg(projection, f, diagonal)!).toBeCloseTo(field, 8);
        },
      ),
      { seed: 16, numRuns: 100 },
    );
  });

  it("the entrance pupil of 50 mm at f/2 is 25 mm across (definition of the f-number, ISO 517)", () => {
    expect(entrancePupilRadius_mm(50, 2)).toBe(12.5);
  });
});
