import { describe, expect, it } from "vitest";
import { illuminance_lx } from "../colour/observer.js";
import { spectrumFrom } from "../spectrum/grid.js";
import { peakIntensity_cd } from "./beam.js";
import { lampIrradiance } from "./lamp-irradiance.js";
import { whiteLampPerLumen } from "./lamp-spectrum.js";

const clear = spectrumFrom(() => 0);

describe("light of a lamp at a distance", () => {
  it("is candela over metres squared in lux without water (photometric law of distance)", () => {
    const spectrum = whiteLampPerLumen(5600);
    expect(illuminance_lx(lampIrradiance(spectrum, 1782.19, 1, clear))).toBeCloseTo(1782.19, 8);
    expect(illuminance_lx(lampIrradiance(spectrum, 1782.19, 2, clear))).toBeCloseTo(445.5475, 8);
    // 4000 lm in 100 degrees: m = ln 0.5 / ln cos 50 = 1.5686; 4000 * 2.5686 / 2 pi = 1635.2 cd; at 0.8 m / 0.64 = 2555 lx.
    expect(illuminance_lx(lampIrradiance(spectrum, peakIntensity_cd(4000, 100), 0.8, clear))).toBeCloseTo(
      2555,
      -1,
    );
  });

  it("loses exp(-K d) per wavelength to the water on top of it (Bouguer, Lambert, Beer)", () => {
    const attenuation = spectrumFrom((nm) => (nm === 650 ? 0.36 : 0.05));
    const spectrum = whiteLampPerLumen(5600);
    const near = lampIrradiance(spectrum, 100, 0.8, clear);
    const seen = lampIrradiance(spectrum, 100, 0.8, attenuation);
    expect(seen[(650 - 380) / 5] / near[(650 - 380) / 5]).toBeCloseTo(Math.exp(-0.288), 12);
    expect(seen[10] / near[10]).toBeCloseTo(Math.exp(-0.04), 12);
  });
});
