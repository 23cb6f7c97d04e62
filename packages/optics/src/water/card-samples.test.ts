import { describe, expect, it } from "vitest";
import { OpticsDomainError } from "../domain-error.js";
import { type CardSample, type CardSeries, comparableCards } from "./card-samples.js";

const card = (depth_m: number, more: Partial<CardSample> = {}): CardSample => ({
  depth_m,
  rgb: [0.2, 0.4, 0.3],
  ...more,
});
const cards = (samples: CardSample[], more: Partial<CardSeries> = {}) =>
  comparableCards({ samples, transfer_curve: "linear", locked_balance: true, ...more });

interface Refused {
  code: string;
  parameters: object;
}

function refusal(samples: CardSample[], more: Partial<CardSeries> = {}): Refused {
  try {
    cards(samples, more);
  } catch (error) {
    if (error instanceof OpticsDomainError) return error.refusal;
    throw error;
  }
  return { code: "none", parameters: {} };
}

describe("cards made comparable", () => {
  const exposure = { iso: 400, shutter_s: 1 / 50, f_number: 4 };

  it("are the logarithms of what was stored, at one exposure and balance", () => {
    const { depths_m, lnLight, exposuresKnown } = cards([card(3), card(7)], { locked_exposure: true });
    expect(depths_m).toEqual([3, 7]);
    expect(lnLight).toEqual([0, 1].map(() => [0.2, 0.4, 0.3].map(Math.log)));
    expect(exposuresKnown).toBe(true);
    expect(cards([card(3), card(7)]).exposuresKnown).toBe(false);
  });

  it("are over the exposure of each picture: ISO times time over N squared (ISO 2720)", () => {
    const told = cards([card(3, { exposure }), card(7, { exposure: { ...exposure, iso: 800 } })]);
    expect(told.exposuresKnown).toBe(true);
    expect(told.lnLight[0][1]).toBeCloseTo(Math.log(0.4 / ((400 / 50) * (1 / 16))), 12);
    expect(told.lnLight[0][2] - told.lnLight[1][2]).toBeCloseTo(Math.log(2), 12);
    const open = cards([card(3, { exposure }), card(7, { exposure: { ...exposure, f_number: 2 } })]);
    expect(open.lnLight[0][0] - open.lnLight[1][0]).toBeCloseTo(Math.log(4), 12);
  });

  it("are over the gains of each channel", () => {
    const gained = cards([card(3, { balance_gains: [2, 1, 3] }), card(7, { balance_gains: [1, 1, 1] })], {
      locked_balance: false,
    });
    expect(gained.lnLight[1][0] - gained.lnLight[0][0]).toBeCloseTo(Math.log(2), 12);
    expect(gained.lnLight[1][1] - gained.lnLight[0][1]).toBeCloseTo(0, 12);
    expect(gained.lnLight[1][2] - gained.lnLight[0][2]).toBeCloseTo(Math.log(3), 12);
  });

  it("are read back through the curve that stored them: 4.5 L below 0.018, else 1.099 L^0.45 - 0.099 (ITU-R BT.709)", () => {
    const stored = 1.099 * 0.2 ** 0.45 - 0.099;
    const { lnLight } = cards([card(3, { rgb: [stored, 0.045, stored] }), card(7)], {
      transfer_curve: "rec709",
    });
    expect(lnLight[0][0]).toBeCloseTo(Math.log(0.2), 9);
    expect(lnLight[0][1]).toBeCloseTo(Math.log(0.01), 9);
  });
});

describe("cards that cannot be compared", () => {
  const exposure = { iso: 400, shutter_s: 1 / 50, f_number: 4 };

  it("were taken at one depth, or less than 2 m apart, and the distance is named", () => {
    expect(refusal([card(3)])).toMatchObject({ code: "card_samples_too_few" });
    expect(refusal([])).toMatchObject({
      code: "card_samples_too_few",
      parameters: { span_m: 0, least_span_m: 2 },
    });
    expect(refusal([card(3), card(4.9)])).toMatchObject({
      code: "card_samples_too_few",
      parameters: { span_m: 1.9, least_span_m: 2 },
    });
    expect(refusal([card(3), card(5)]).code).toBe("none");
    expect(refusal([card(5), card(3), card(4)]).code).toBe("none");
  });

  it.each([
    ["clipped", { rgb: [0.2, 0.995, 0.3] }, { case: "clipped", depth_m: 7, value: 0.995 }],
    ["lost", { rgb: [0.00009, 0.4, 0.3] }, { case: "dark", depth_m: 7, value: 0.00009 }],
    ["no number", { rgb: [0.2, 0.4, Number.NaN] }, { case: "dark", depth_m: 7, value: Number.NaN }],
    ["too deep", { depth_m: 60.1 }, { case: "depth", depth_m: 60.1, max_depth_m: 60 }],
    ["above the water", { depth_m: -0.1 }, { case: "depth", depth_m: -0.1, max_depth_m: 60 }],
    ["of no depth", { depth_m: Number.NaN }, { case: "depth", depth_m: Number.NaN, max_depth_m: 60 }],
  ] as [string, Partial<CardSample>, object][])("are %s", (_, change, parameters) => {
    const refused = refusal([card(3), { ...card(7), ...change }]);
    expect(refused).toEqual({ code: "card_samples_malformed", parameters });
  });

  it("but at the ends of what can be used they can", () => {
    const ends = [card(0, { rgb: [1e-4, 0.9949, 0.3] }), card(60, { rgb: [1e-4, 0.9949, 0.3] })];
    expect(refusal(ends).code).toBe("none");
  });

  it.each([
    ["iso", { iso: 0 }],
    ["shutter_s", { shutter_s: -1 }],
    ["f_number", { f_number: Number.POSITIVE_INFINITY }],
  ])("have an exposure without sense: %s", (_, change) => {
    const cards = [card(3, { exposure }), card(7, { exposure: { ...exposure, ...change } })];
    expect(refusal(cards)).toEqual({
      code: "card_samples_malformed",
      parameters: { case: "exposure_not_positive", depth_m: 7 },
    });
  });

  it("have gains without sense", () => {
    const gains = [card(3, { balance_gains: [1, 1, 1] }), card(7, { balance_gains: [1, 0, 1] })];
    expect(refusal(gains)).toEqual({
      code: "card_samples_malformed",
      parameters: { case: "gains_not_positive", depth_m: 7 },
    });
  });

  it("have an exposure or gains with some of them only, and the count is named", () => {
    expect(refusal([card(3, { exposure }), card(7), card(9)]).parameters).toEqual({
      case: "not_with_all",
      field: "exposure",
      given: 1,
      samples: 3,
    });
    const some = [card(3, { balance_gains: [1, 1, 1] }), card(7, { balance_gains: [1, 1, 1] }), card(9)];
    expect(refusal(some).parameters).toMatchObject({ field: "balance_gains", given: 2, samples: 3 });
  });

  it("may have been balanced one by one", () => {
    expect(refusal([card(3), card(7)], { locked_balance: false })).toEqual({
      code: "card_samples_malformed",
      parameters: { case: "balance_unlocked" },
    });
  });
});
