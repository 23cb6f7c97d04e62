// What brings each step at the start: a card by day, the lamps' light by night, and what the light allows.

import { expect, it } from "vitest";
import { BRIGHT_REEF, NIGHT_WRECK, OUTER_REEF_MORNING } from "../../../../../test/support/scenes.js";
import type { BalanceAtDepth } from "../../result/white-balance.js";
import { decided, exposed, parametersIn, toldBy } from "../decided.test-support.js";
import type { Decisions } from "../decisions.js";
import { startOf } from "../legs.js";
import { atStart } from "./start.js";

const reef = decided(OUTER_REEF_MORNING);

it("begins with the exposure at the shallow end, and a balance on the card", () => {
  expect(toldBy(atStart(reef))).toEqual([
    ["at_start", "start_exposure", 5],
    ["at_start", "balance_on_card", 5],
  ]);
  const { iso, f_number, exposure_value_ev100 } = startOf(reef.legs);
  expect(parametersIn(atStart(reef), "start_exposure")).toEqual({
    iso,
    f_number,
    ev: exposure_value_ev100.likely,
    is_too_bright: false,
  });
  expect(parametersIn(atStart(reef), "start_exposure")).toMatchObject({ is_too_bright: false });
  expect(atStart(reef).map(({ basis }) => basis)).toEqual(["computed", "common_practice"]);
});

it("exposes behind the neutral density where it is too bright", () => {
  expect(parametersIn(atStart(decided(BRIGHT_REEF)), "start_exposure")).toMatchObject({
    is_too_bright: true,
  });
});

it("tells instead what is missing where it is too dark", () => {
  const [leg, ...more] = reef.legs;
  const dark = exposed(leg, "shallow", {
    verdict: "too_dark",
    shortfall_stops: { low: 1, likely: 2, high: 3 },
  });
  const steps = atStart({ ...reef, legs: [dark, ...more] });
  expect(toldBy(steps)[0]).toEqual(["at_start", "too_dark", 5]);
  expect(parametersIn(steps, "too_dark")).toMatchObject({ shortfall_stops: 2 });
  expect(steps.map(({ code }) => code)).not.toContain("start_exposure");
});

it("tells the cast that the balance leaves at the start where it is out of reach there, and none where it is in reach", () => {
  const [leg] = reef.legs;
  const [first, ...deeper] = leg.balance.depths;
  const balanced = (change: Partial<BalanceAtDepth>): Decisions => ({
    ...reef,
    legs: [{ ...leg, balance: { ...leg.balance, depths: [{ ...first, ...change }, ...deeper] } }],
  });
  const cast_left_delta_e00 = 4;
  expect(
    parametersIn(atStart(balanced({ in_reach: false, cast_left_delta_e00 })), "balance_on_card"),
  ).toEqual({
    cast: 4,
  });
  expect(parametersIn(atStart(balanced({ in_reach: true, cast_left_delta_e00 })), "balance_on_card")).toEqual(
    {
      cast: 0,
    },
  );
});

it("balances in the lamps' light where they make it, with their kelvin where they have one", () => {
  const night = decided(NIGHT_WRECK);
  const { balance } = night.legs[0];
  expect(toldBy(atStart(night))[1]).toEqual(["at_start", "balance_on_card_in_lamp_light", 15]);
  expect(parametersIn(atStart(night), "balance_on_card_in_lamp_light")).toEqual({
    cct_K: balance.lamp_kelvin_setting_K,
    cast: balance.lamp_kelvin_leaves_delta_e00?.likely,
  });
  const { lamp_kelvin_setting_K: _, lamp_kelvin_leaves_delta_e00: __, ...without } = balance;
  const green: Decisions = { ...night, legs: [{ ...night.legs[0], balance: without }] };
  expect(parametersIn(atStart(green), "balance_on_card_in_lamp_light")).toEqual({ cast: 0 });
});
