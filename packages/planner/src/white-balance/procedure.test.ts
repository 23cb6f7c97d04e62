// What is said in which order is common practice, no published source; the rest guards what brings each line.

import { daylightScene, NIGHT_WRECK, REEF_WITH_LAMPS } from "@sunfathom/fixtures/scenes";
import { expect, it } from "vitest";
import type { BalanceSteps } from "../codes/balance-procedure.js";
import { type Coded, codesOf } from "../codes/coded.js";
import type { BalanceAtDepth, WhiteBalanceFigures } from "../result/white-balance.js";
import { procedureOf } from "./procedure.js";

const say = codesOf<BalanceSteps>();

const gain = { low: 1, likely: 1, high: 1 };
const at = (depth_m: number, in_reach = true): BalanceAtDepth => ({
  depth_m,
  red_gain: gain,
  green_gain: gain,
  blue_gain: gain,
  in_reach,
  short_of_reach_stops: in_reach ? 0 : 1,
  cast_left_delta_e00: 0,
  duv: 0,
});
const figures = (changes: Partial<WhiteBalanceFigures> = {}): WhiteBalanceFigures => ({
  method: "card",
  balance_depths_descending_m: [5, 9],
  balance_depths_ascending_m: [18, 12],
  balance_tolerance_delta_e00: 8,
  depths: [at(5)],
  ...changes,
});
const scene = daylightScene("IB", 45, 5, 18);
const first = [say("filter_first"), say("card_upright"), say("fill_frame")];

it("at one depth in reach there is a card, and that light changes", () => {
  expect(procedureOf(scene, figures())).toEqual([...first, say("light_changes")]);
});

it("over a range there are depths going down and coming up", () => {
  expect(procedureOf(scene, figures({ depths: [at(5), at(18)] }))).toEqual([
    ...first,
    say("going_down", { depths_m: [5, 9] }),
    say("coming_up", { depths_m: [18, 12] }),
    say("light_changes"),
  ]);
});

it("the first depth out of reach is named, at a single depth too", () => {
  const short = procedureOf(scene, figures({ depths: [at(5), at(9, false), at(12, false)] }));
  expect(short.slice(-2)).toEqual([say("out_of_reach", { depth_m: 9 }), say("light_changes")]);
  expect(procedureOf(scene, figures({ depths: [at(5, false)] }))).toContainEqual(
    say("out_of_reach", { depth_m: 5 }),
  );
});

it("lamps are turned away first where daylight is balanced to", () => {
  expect(procedureOf(REEF_WITH_LAMPS, figures())).toEqual([
    say("lamps_away"),
    ...first,
    say("light_changes"),
  ]);
});

it("where lamps lead, the card is in their light, with their kelvin or none", () => {
  const lamps = (lamp_kelvin_setting_K?: number) =>
    procedureOf(
      NIGHT_WRECK,
      figures({
        method: "card_at_lamp_distance",
        ...(lamp_kelvin_setting_K === undefined ? {} : { lamp_kelvin_setting_K }),
      }),
    );
  const around = (said: Coded<BalanceSteps>) => [
    say("lamps_on"),
    say("card_in_lamp_light"),
    say("fill_frame"),
    said,
    say("keep_distance"),
  ];
  expect(lamps(5600)).toEqual(around(say("kelvin", { cct_K: 5600 })));
  expect(lamps()).toEqual(around(say("no_kelvin_fits")));
});
