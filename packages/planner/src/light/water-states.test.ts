import { daylightScene } from "@sunfathom/fixtures/scenes";
import { jerlovKd, kdUnderSun, REFERENCE_MU0, waterFromKd } from "@sunfathom/optics";
import { expect, it } from "vitest";
import { NOMINAL } from "../uncertainty/nuisance.js";
import { conditionsOf } from "./conditions.js";
import { underwater } from "./underwater.js";
import { WaterStates } from "./water-states.js";

const asDescribed = { kdRemainderScale: 1, scatteringScale: 1, coastalShare: 0, referenceMu0: REFERENCE_MU0 };

it("tells one setting of a water from another, and works each out once", () => {
  const states = new WaterStates(jerlovKd("II"));
  const settings = [
    [asDescribed, 0.9],
    [asDescribed, 0.8],
    [{ ...asDescribed, kdRemainderScale: 1.2 }, 0.9],
    [{ ...asDescribed, scatteringScale: 1.5 }, 0.9],
    [{ ...asDescribed, coastalShare: 0.5 }, 0.9],
    [{ ...asDescribed, referenceMu0: 0.86 }, 0.9],
  ] as const;
  for (const [spread, mu0] of settings) {
    const state = states.under(spread, mu0);
    // By the formulas themselves, with nothing remembered.
    const plain = waterFromKd(jerlovKd("II"), spread);
    expect(state.kd_per_m).toEqual(kdUnderSun(plain, mu0, spread.referenceMu0));
    expect(state.water).toEqual(plain);
    expect(states.under({ ...spread }, mu0)).toBe(state);
  }
  expect(new Set(settings.map(([spread, mu0]) => states.under(spread, mu0))).size).toBe(settings.length);
});

it("knows a water under another daylight for another, though its description is the same", () => {
  const [low, high] = [20, 70].map((sun) => conditionsOf(daylightScene("II", sun, 5)));
  const under = (daylight: typeof low.daylight) => underwater({ ...low, daylight }, NOMINAL).kd_per_m;
  under(low.daylight);
  expect(under(high.daylight)).toEqual(underwater(high, NOMINAL).kd_per_m);
});
