import { expect, it } from "vitest";
import { colourRecoveryReasons } from "./colour-recovery.js";

it("where red ends is told of the recording without a filter, or with it", () => {
  const ends = { acceptable_m: 8, gone_m: 19 };
  const said = [false, true].map((with_filter) =>
    colourRecoveryReasons.red_is_gone({ with_filter, ...ends }),
  );
  expect(said[0]).not.toBe(said[1]);
  for (const text of said) expect(text).toMatch(/ 8 m .* 19 m/);
});

it("how well red is recorded is told in a word beside its figure", () => {
  const said = (["acceptable", "poor"] as const).map((quality) =>
    colourRecoveryReasons.red_record({ depth_m: 12, share: 0.17, quality, snr: 4.8 }),
  );
  expect(said[0]).not.toBe(said[1]);
  for (const text of said) expect(text).toMatch(/12 m.* 4\.8 /);
});
