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

it("red that is lost at the surface, or as soon as it is no longer good, has one depth at most", () => {
  const said = (acceptable_m: number, gone_m: number) =>
    colourRecoveryReasons.red_is_gone({ with_filter: false, acceptable_m, gone_m });
  expect(said(0, 0.1)).toMatch(/surface/);
  expect(said(0, 0.1)).not.toMatch(/\d/);
  expect(said(0.2, 3)).toMatch(/surface.* 3 m/);
  expect(said(0.2, 3)).not.toMatch(/\b0 m/);
  expect(said(2.4, 2.6).match(/2\.5 m/g)).toHaveLength(1);
});
