// Spectral curves at their extremes: steep, narrow, of two points, of zeros, at the ends of their range.
import fc from "fast-check";
import type { Scene } from "./arbitrary.js";

const FROM_nm = 380;
const TO_nm = 780;

/** Two to six wavelengths in order: anywhere, close together, or at the ends. */
const wavelengths = fc
  .uniqueArray(
    fc.oneof(
      fc.integer({ min: FROM_nm, max: TO_nm }),
      fc.integer({ min: 540, max: 560 }),
      fc.constantFrom(FROM_nm, FROM_nm + 1, 400, 700, 720, TO_nm - 1, TO_nm),
    ),
    { minLength: 2, maxLength: 6 },
  )
  .map((all) => all.sort((a, b) => a - b));

function curve(name: string, value: fc.Arbitrary<number>): fc.Arbitrary<Scene[]> {
  return wavelengths.chain((all) =>
    fc
      .tuple(...all.map(() => value))
      .map((values) => all.map((wavelength_nm, nth) => ({ wavelength_nm, [name]: values[nth] }))),
  );
}

const kd_samples = curve(
  "kd_per_m",
  fc.oneof(fc.constantFrom(0.005, 0.02, 0.1, 20), fc.double({ min: 0.005, max: 20, noNaN: true })),
);
const filter_transmittance = curve(
  "transmittance",
  fc.oneof(
    { arbitrary: fc.constantFrom(0, 1e-9, 1), weight: 3 },
    { arbitrary: fc.double({ min: 0, max: 1, noNaN: true }), weight: 1 },
  ),
);
const kit = fc.array(
  filter_transmittance.map((transmittances) => ({
    id: "a",
    item: "lens_filter",
    filter_transmittance: transmittances,
  })),
  { minLength: 1, maxLength: 2 },
);
const lamps = fc.array(
  fc.record(
    {
      flux_lm: fc.constantFrom(10, 38, 4000, 200_000),
      distance_m: fc.constantFrom(0.05, 0.8, 3, 20),
      filter_kind: fc.constantFrom("red", "green", "blue"),
      filter_density: fc.constantFrom(0.05, 1, 3),
    },
    { requiredKeys: ["flux_lm", "distance_m"] },
  ),
  { minLength: 1, maxLength: 3 },
);

/** Bells of all widths in the order of their colours, some with another channel's light in them, at few or many wavelengths. */
const sensor_samples = fc
  .record({
    means: fc.tuple(
      fc.integer({ min: 400, max: 480 }),
      fc.integer({ min: 500, max: 570 }),
      fc.integer({ min: 580, max: 700 }),
    ),
    width_nm: fc.constantFrom(3, 10, 30, 60, 120),
    mixed: fc.constantFrom(0, 1e-9, 0.05, 0.4),
    peaks: fc.tuple(...[0, 1, 2].map(() => fc.constantFrom(0.02, 0.3, 1))),
    step_nm: fc.constantFrom(1, 5, 20, 50),
  })
  .map(({ means, width_nm, mixed, peaks, step_nm }) =>
    Array.from({ length: Math.floor((TO_nm - FROM_nm) / step_nm) + 1 }, (_, n) => {
      const wavelength_nm = FROM_nm + n * step_nm;
      const [blue = 0, green = 0, red = 0] = means.map((mean) =>
        Math.exp(-(((wavelength_nm - mean) / width_nm) ** 2)),
      );
      const share = (own: number, other: number, peak = 1) => (peak * (own + mixed * other)) / (1 + mixed);
      return {
        wavelength_nm,
        red: share(red, green, peaks[0]),
        green: share(green, blue, peaks[1]),
        blue: share(blue, green, peaks[2]),
      };
    }),
  );

/** What replaces the same fields of a scene. */
export const extremeLight: fc.Arbitrary<Scene> = fc.record(
  {
    kd_samples,
    filter_transmittance,
    kit,
    lamps,
    sensor_samples,
    depth_m: fc.constantFrom(0.1, 1, 10, 40, 100),
  },
  { requiredKeys: [] },
);
