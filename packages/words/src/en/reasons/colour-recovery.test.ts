import { expect, it } from "vitest";
import { colourRecoveryReasons } from "./colour-recovery.js";

it("where red ends is told of the recording without a filter, or with it", () => {
  const ends = { acceptable_m: 8, gone_m: 19 };
  expect(colourRecoveryReasons.red_is_gone({ with_filter: false, ...ends })).toMatch(
    /^Without .* 8 m .* 19 m/,
  );
  expect(colourRecoveryReasons.red_is_gone({ with_filter: true, ...ends })).toMatch(
    /^With the filter .* 8 m .* 19 m/,
  );
});

it("how well red is recorded is told in a word beside its figure", () => {
  expect(colourRecoveryReasons.red_record({ depth_m: 12, share: 0.17, quality: "poor", snr: 4.8 })).toContain(
    "4.8 times the noise: poor",
  );
});
