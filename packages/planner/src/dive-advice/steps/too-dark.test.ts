import { DARK_AND_GREEN } from "@sunfathom/fixtures/scenes";
import { expect, it } from "vitest";
import { exposureLoss } from "../../exposure-loss/exposure-loss.js";
import { parametersIn, toldBy } from "../decided.test-support.js";
import { tooDark } from "./too-dark.js";

const at = { phase: "going_down", depth_m: 14 } as const;

it("what is missing is told with the settings that do not reach, and the first two ways that are enough", () => {
  const [dark] = exposureLoss(DARK_AND_GREEN).depths;
  const enough = dark.ways_to_pay.filter((way) => way.enough);
  expect(enough.length).toBeGreaterThan(2);
  // Among ways that are not enough, wherever they stand.
  const poor = dark.ways_to_pay.filter((way) => !way.enough);
  const step = tooDark(at, { ...dark, ways_to_pay: [...poor, ...enough] });
  expect(toldBy([step])).toEqual([["going_down", "too_dark", 14]]);
  const ways = enough.slice(0, 2).map(({ code, parameters }) => ({ code, parameters }));
  const at_most = { iso: 800, f_number: 2.8, shortfall_stops: dark.shortfall_stops?.likely };
  expect(parametersIn([step], "too_dark")).toEqual({ ...at_most, ways });
  expect(tooDark(at, { ...dark, ways_to_pay: poor }).parameters).toEqual({ ...at_most, ways: [] });
});
