import { expect, it } from "vitest";
import { focalPlaneExposure_lx_s, saturationExposure_lx_s } from "./iso-12232.js";

it("saturates at 78 / S lx s: 0.78 at ISO 100, 0.024375 at ISO 3200 (ISO 12232)", () => {
  expect(saturationExposure_lx_s(100)).toBe(0.78);
  expect(saturationExposure_lx_s(3200)).toBe(0.024375);
});

it("puts 0.65 L t / N^2 on the focal plane: 4000 cd/m2 at f/16 and 1/100 s give 0.1016 lx s (ISO 12232; 0.65 from memory)", () => {
  expect(focalPlaneExposure_lx_s(4000, 16, 1 / 100)).toBeCloseTo(0.1015625, 12);
});

it("leaves 3.26 stops from the metered grey to saturation: 78 / (0.65 * 12.5) = 9.6 (ISO 12232 with ISO 2720, K 12.5)", () => {
  // A metered luminance fills N^2/t = L S / K, so H = 0.65 K / S: saturation over it is 78 / (0.65 * 12.5) = 9.6.
  const [iso, f, t] = [400, 5.6, 1 / 50];
  const metered = (12.5 * f ** 2) / (iso * t);
  expect(saturationExposure_lx_s(iso) / focalPlaneExposure_lx_s(metered, f, t)).toBeCloseTo(9.6, 12);
});
