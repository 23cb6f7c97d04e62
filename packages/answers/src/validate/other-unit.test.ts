import { describe, expect, it } from "vitest";
import { otherUnit } from "./other-unit.js";

const names = [
  "depth_m",
  "visibility_m",
  "wind_speed_m_s",
  "shutter_s",
  "dome_radius_mm",
  "latitude_deg",
  "f_number",
  "iso",
];

describe("a field in another unit than the scene takes", () => {
  // The international foot is 0.3048 m, the yard 3 ft, the nautical mile 1852 m (exactly, by definition).
  it.each([
    ["depth_ft", 60, "depth_m", "ft", "m", 18.3],
    ["depth_feet", 60, "depth_m", "ft", "m", 18.3],
    ["depthFt", 33, "depth_m", "ft", "m", 10.1],
    ["depth_cm", 250, "depth_m", "cm", "m", 2.5],
    ["visibility_ft", 100, "visibility_m", "ft", "m", 30.5],
    ["visibility_yards", 20, "visibility_m", "yd", "m", 18.3],
    ["wind_speed_knots", 10, "wind_speed_m_s", "kn", "m/s", 5.14],
    ["wind_speed_km_h", 36, "wind_speed_m_s", "km/h", "m/s", 10],
    ["shutter_ms", 20, "shutter_s", "ms", "s", 0.02],
    ["dome_radius_cm", 9, "dome_radius_mm", "cm", "mm", 90],
    ["dome_radius_in", 4, "dome_radius_mm", "in", "mm", 102],
  ])("%s of %f is told its value as %s", (sent, value, field, from, to, converted) => {
    expect(otherUnit(sent, value, names)).toEqual({ field, value, from_unit: from, to_unit: to, converted });
  });

  it("is read from a query string, whose values are text", () => {
    expect(otherUnit("depth_ft", "60", names)).toMatchObject({ value: 60, converted: 18.3 });
  });

  it.each([["deep"], [""], [null], [Number.NaN], [{}]])(
    "is told what one is where the value is %j",
    (value) => {
      expect(otherUnit("depth_ft", value, names)).toMatchObject({
        field: "depth_m",
        value: 1,
        converted: 0.305,
      });
    },
  );

  it("finds its field through a slip of the pen", () => {
    expect(otherUnit("dept_ft", 60, names)?.field).toBe("depth_m");
    expect(otherUnit("viz_ft", 60, names)?.field).toBe("visibility_m");
  });

  it.each(["depth_m", "depth", "ft", "height_ft", "iso_ft", "depth_s", "latitude_ft", "f_number_in", ""])(
    "%s is no such field",
    (sent) => {
      expect(otherUnit(sent, 60, names)).toBeUndefined();
    },
  );
});
