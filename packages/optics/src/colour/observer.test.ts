import { describe, expect, it } from "vitest";
import { spectrumFrom } from "../spectrum/grid.js";
import { chromaticity, illuminance_lx, xyzOf } from "./observer.js";

/** One watt per square metre within the cell of one wavelength. */
const line = (at: number) => spectrumFrom((nm) => (nm === at ? 1 / 5 : 0));

// CIE 18.2 and ISO 23539: 683 lm/W at 555 nm; V(lambda) of CIE 1924 there 1, at 510 nm 0.503, at 610 nm 0.503.
describe("the standard observer", () => {
  it.each([
    [555, 683],
    [510, 683 * 0.503],
    [610, 683 * 0.503],
  ])("sees a watt of %d nm as %d lm", (nm, lumen) => {
    expect(illuminance_lx(line(nm)) / lumen).toBeCloseTo(1, 3);
    expect(illuminance_lx(line(nm).map((w) => 2 * w)) / lumen).toBeCloseTo(2, 3);
  });

  // CIE 15:2018: x and y of the equal-energy spectrum are 1/3.
  it("sees an even spectrum in the middle of the diagram", () => {
    const { x, y } = chromaticity(xyzOf(spectrumFrom(() => 1)));
    expect(x).toBeCloseTo(1 / 3, 4);
    expect(y).toBeCloseTo(1 / 3, 4);
  });
});
