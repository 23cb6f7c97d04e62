// Apart from the other tests of the fit: hundreds of fits, which would make their mutation runs last hours.
import { expect, it } from "vitest";
import { normalFrom } from "../random.test-support.js";
import { CHANNELS, fitOf, trueKd } from "./fit-card.test-support.js";
import { jerlovKd } from "./jerlov-1976.js";

it.each([
  ["II", 0.02, [3, 7, 11, 15]],
  ["III", 0.05, [2, 6, 10, 14, 18]],
  ["3C", 0.02, [1, 4, 7]],
  ["1C", 0.05, [2, 4, 6, 8, 10, 12]],
] as const)("reports errors as large as they are: %s, noise %s, depths %s", (type, noise, depths) => {
  const kd = jerlovKd(type);
  const truth = trueKd(kd, depths[0], depths[depths.length - 1]);
  const runs = 80;
  const normal = normalFrom(20260310);
  let within = 0;
  let squares = 0;
  for (let run = 0; run < runs; run++) {
    const { channel_kd } = fitOf(kd, depths, noise, normal);
    CHANNELS.forEach((name, k) => {
      const { value_per_m, standard_error_per_m } = channel_kd![name];
      const score = (value_per_m - truth[k]) / standard_error_per_m;
      squares += score * score;
      if (Math.abs(score) < 1.2816) within++;
    });
  }
  // The 10th and the 90th percentile of a normal error lie at 1.28 standard errors.
  expect(within / (3 * runs)).toBeGreaterThan(0.72);
  expect(within / (3 * runs)).toBeLessThan(0.93);
  expect(Math.sqrt(squares / (3 * runs))).toBeGreaterThan(0.6);
  expect(Math.sqrt(squares / (3 * runs))).toBeLessThan(1.25);
});
