import { publishedIlluminant } from "@sunfathom/fixtures/illuminants";
import { daylightScene } from "@sunfathom/fixtures/scenes";
import {
  locusNormal,
  locusUv,
  planckian,
  type Spectrum,
  spectrumFrom,
  xyFromUv1960,
} from "@sunfathom/optics";
import { describe, expect, it } from "vitest";
import { type BalanceReach, balanceReach, balanceToCard } from "./balance-reach.js";
import { apply, invert, type Vector3 } from "./matrix.js";
import { sensorOf } from "./sensor.js";
import { rawOf, sensorProfile } from "./sensor-profile.js";

const profile = sensorProfile(sensorOf({}, { crosstalkSd: 0 }));
const camera = daylightScene("IB", 45, 5);
const reach = balanceReach(camera, profile);
const balance = (light: Spectrum) => balanceToCard(reach, rawOf(profile, light));
const line = (nm: number, width_nm: number) => spectrumFrom((l) => Math.exp(-(((l - nm) / width_nm) ** 2)));

/** Raw values of a colour at a mired and duv, as the camera's daylight matrix sees it. */
function rawAt(mired: number, duv: number): Vector3 {
  const p = locusUv(mired);
  const n = locusNormal(mired);
  const { x, y } = xyFromUv1960(p.u + duv * n.u, p.v + duv * n.v);
  return apply(invert(profile.daylightMatrix), [x / y, 1, (1 - x - y) / y]);
}

describe("white balance from 2500 to 10 000 K within |duv| 0.03 (typical, from memory)", () => {
  it.each(["D50", "D55", "D65", "D75", "A"] as const)(
    "reaches CIE illuminant %s and makes its card neutral",
    (name) => {
      const raw = rawOf(profile, publishedIlluminant(name));
      const { gains, in_reach, residual_stops } = balanceToCard(reach, raw);
      expect(in_reach).toBe(true);
      expect(residual_stops).toBe(0);
      const balanced = raw.map((v, k) => v * gains[k]);
      expect(balanced[0] / balanced[1]).toBeCloseTo(1, 12);
      expect(balanced[2] / balanced[1]).toBeCloseTo(1, 12);
      expect(Math.min(...gains)).toBe(1);
    },
  );

  it("does not reach candlelight at 1500 K, nor green or deep blue light, and says by how many stops", () => {
    for (const light of [planckian(1500), line(530, 30), line(470, 25)]) {
      const { in_reach, residual_stops } = balance(light);
      expect(in_reach).toBe(false);
      expect(residual_stops).toBeGreaterThan(0.3);
    }
  });

  // A card that lies outside by less than can be seen (0.02 stop) counts as reached.
  it("ends where it is said to end: inside each limit is reached, and outside by more than can be seen is not", () => {
    const inside: [number, number][] = [
      [1e6 / 2550, 0],
      [1e6 / 9800, 0],
      [200, 0.0285],
      [200, -0.0285],
      [300, 0.0285],
    ];
    const outside: [number, number][] = [
      [1e6 / 2300, 0],
      [1e6 / 12000, 0],
      [200, 0.035],
      [200, -0.035],
      [300, 0.035],
    ];
    for (const [mired, duv] of inside) expect(balanceToCard(reach, rawAt(mired, duv)).in_reach).toBe(true);
    for (const [mired, duv] of outside) expect(balanceToCard(reach, rawAt(mired, duv)).in_reach).toBe(false);
  });

  it("is a closed outline of finite gains however wide its limits are, also where they ask for colours that no light has", () => {
    for (const white_balance_max_duv of [0, 0.03, 0.05, 0.1]) {
      for (const [min, max] of [
        [1500, 20000],
        [1500, 1600],
        [2500, 10000],
      ]) {
        const limits = { ...camera, white_balance_max_duv };
        const wide = balanceReach(
          { ...limits, white_balance_min_cct_K: min, white_balance_max_cct_K: max },
          profile,
        );
        for (const { red, blue } of wide) expect([red, blue].every(Number.isFinite)).toBe(true);
      }
    }
  });

  it("grows with its limits", () => {
    const wide = balanceReach({ ...camera, white_balance_max_duv: 0.05 }, profile);
    const raw = rawAt(200, 0.04);
    expect(balanceToCard(reach, raw).in_reach).toBe(false);
    expect(balanceToCard(wide, raw).in_reach).toBe(true);
  });

  it("sets, for a card out of reach, the gains of the nearest point of its edge, without a jump on the way there", () => {
    const start = rawAt(200, 0);
    const end = rawOf(profile, line(490, 20));
    const between = (t: number): Vector3 =>
      [0, 1, 2].map((k) => start[k] ** (1 - t) * end[k] ** t) as unknown as Vector3;
    const stops = (t: number) => balanceToCard(reach, between(t)).gains.map(Math.log2);
    let crossed = 0;
    let last = balanceToCard(reach, between(0));
    for (let t = 0.002; t <= 1; t += 0.002) {
      const next = balanceToCard(reach, between(t));
      const step = Math.max(...stops(t).map((s, k) => Math.abs(s - stops(t - 0.002)[k])));
      // The nearest point of an outline moves no faster than the point itself; its corners allow for a little more.
      expect(step).toBeLessThan(0.1);
      if (last.in_reach !== next.in_reach) crossed++;
      expect(next.residual_stops).toBeGreaterThanOrEqual(last.residual_stops - 1e-9);
      last = next;
    }
    expect(crossed).toBe(1);
    expect(last.in_reach).toBe(false);
  });

  it("does not depend on how bright the card is", () => {
    const raw = rawOf(profile, line(490, 30));
    const brighter = raw.map((v) => v * 1000) as unknown as Vector3;
    balanceToCard(reach, brighter).gains.forEach((g, k) => {
      expect(g).toBeCloseTo(balanceToCard(reach, raw).gains[k], 10);
    });
  });
});

describe("the outline of what can be set", () => {
  // The edge of the limits, drawn finely and independently: what lies just inside is reached, just outside is not.
  it("follows the limits all the way round, between its corners too, for a camera that is asked anew", () => {
    const own = { ...camera, white_balance_min_cct_K: 3000, white_balance_max_cct_K: 8000 };
    const outline = balanceReach({ ...own, white_balance_max_duv: 0.021 }, profile);
    expect(outline).toHaveLength(34);
    const [warm, cool] = [1e6 / 3000, 1e6 / 8000];
    const inReach = (mired: number, duv: number) => balanceToCard(outline, rawAt(mired, duv)).in_reach;
    for (let i = 0; i <= 20; i++) {
      const mired = cool + ((warm - cool) * i) / 20;
      for (const sign of [1, -1]) {
        expect(inReach(mired, sign * 0.0205)).toBe(true);
        expect(inReach(mired, sign * 0.026)).toBe(false);
      }
    }
    for (let duv = -0.018; duv <= 0.018; duv += 0.006) {
      expect(inReach(warm - 3, duv)).toBe(true);
      expect(inReach(warm + 25, duv)).toBe(false);
      expect(inReach(cool + 3, duv)).toBe(true);
      expect(inReach(cool - 25, duv)).toBe(false);
    }
  });
});

describe("the gains that are set", () => {
  it.each([
    ["red and blue weaker than green", [0.25, 1, 0.5], [4, 1, 2]],
    ["red stronger than green", [2, 1, 0.5], [1, 2, 4]],
    ["blue stronger than all", [1, 2, 8], [8, 4, 1]],
  ] as [string, Vector3, Vector3][])("bring all channels level, the strongest at 1: %s", (_, raw, gains) => {
    const wide: BalanceReach = [
      { red: -9, blue: -9 },
      { red: 9, blue: -9 },
      { red: 9, blue: 9 },
      { red: -9, blue: 9 },
    ];
    expect(balanceToCard(wide, raw)).toEqual({ gains, in_reach: true, residual_stops: 0 });
  });
});

describe("the nearest point of an outline", () => {
  // A unit square in stops of gain: geometry by hand.
  const square: BalanceReach = [
    { red: 0, blue: 0 },
    { red: 1, blue: 0 },
    { red: 1, blue: 1 },
    { red: 0, blue: 1 },
  ];
  const card = (red: number, blue: number): Vector3 => [2 ** -red, 1, 2 ** -blue];

  it.each([
    [0.5, 0.5, true, 0],
    [2, 0.5, false, 1],
    [0.5, -3, false, 3],
    [4, 5, false, 5],
  ])("a card that asks for (%d, %d) stops: in reach %s, %d stops off", (red, blue, in_reach, off) => {
    const found = balanceToCard(square, card(red, blue));
    expect(found.in_reach).toBe(in_reach);
    expect(found.residual_stops).toBeCloseTo(off, 12);
  });
});

describe("what is remembered of a sensor", () => {
  // Two cameras of one cross-talk that see blue differently, asked for in turn.
  const mean = sensorOf({}, { crosstalkSd: 0 });
  const other = { ...mean, blue: mean.blue.map((b, i) => b * (i % 2)) };

  it("is found by all of its curves: another blue has another profile and another reach of its balance", () => {
    const [first, second] = [sensorProfile(mean), sensorProfile(other)];
    expect(second.daylightMatrix).not.toEqual(first.daylightMatrix);
    expect(sensorProfile(mean)).toBe(first);
    const asked = balanceReach(camera, first);
    expect(balanceReach(camera, second)).not.toEqual(asked);
    expect(balanceReach(camera, sensorProfile(mean))).toBe(asked);
  });
});
