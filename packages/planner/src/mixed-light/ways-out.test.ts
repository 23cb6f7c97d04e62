import { daylightScene, TWO_LAMPS } from "@sunfathom/fixtures/scenes";
import {
  add,
  CLEAR,
  FIRST_NM,
  filterTransmittance,
  illuminance_lx,
  multiply,
  STEP_NM,
  whiteLampPerLumen,
} from "@sunfathom/optics";
import { describe, expect, it } from "vitest";
import { castBetween } from "../camera/cast.js";
import { rawOf } from "../camera/sensor-profile.js";
import { conditionsOf } from "../light/conditions.js";
import { CLEAR_LAMPS, lampLightAt, underwater } from "../light/underwater.js";
import type { WayOut, WayOutKind } from "../result/mixed-light.js";
import type { Lamp, Scene } from "../scene/scene.js";
import { NOMINAL } from "../uncertainty/nuisance.js";
import { splitWithLampFilter } from "./lamp-filter-split.js";
import { lightsAt, VISIBLE_SPLIT_DELTA_E00 } from "./lights.js";
import { waysOut } from "./ways-out.js";

const DEPTH_M = 8;
const lit = (type: string, lamp: Partial<Lamp> = {}): Scene => ({
  ...daylightScene(type, 50, DEPTH_M),
  lamps: [{ ...TWO_LAMPS, ...lamp }],
});

function lightsOf(scene: Scene) {
  const world = underwater(conditionsOf(scene), NOMINAL);
  return { world, ...lightsAt(world, DEPTH_M) };
}
function wayOf(scene: Scene, kind: WayOutKind): WayOut {
  const found = waysOut(lightsOf(scene)).find(({ way }) => way === kind);
  if (!found) throw new Error(`no ${kind}`);
  return found;
}

describe("lamps off", () => {
  it("leaves no split, and costs what lamps add to daylight, in stops", () => {
    const { daylight, lamps } = lightsOf(lit("IB"));
    const cost = Math.log2(illuminance_lx(add(daylight, lamps)) / illuminance_lx(daylight));
    const way = wayOf(lit("IB"), "lamps_off");
    expect(way.split_left_delta_e00).toBe(0);
    expect(way.cost_stops).toBeCloseTo(cost, 9);
    expect(way.cost_stops).toBeGreaterThan(0);
    expect([way.code, way.parameters]).toEqual(["lamps_off", { cost_stops: way.cost_stops }]);
  });
});

describe("a filter on the lamps", () => {
  it.each(["IB", "3C"])(
    "in %s is the one that leaves least, of both kinds and every half stop of density",
    (type) => {
      const scene = lit(type);
      const way = wayOf(scene, "lamp_filter");
      const all = (["blue", "green"] as const).flatMap((kind) =>
        Array.from({ length: 20 }, (_, i) => 0.15 * (i + 1)).map((density) => ({
          kind,
          density,
          split: splitWithLampFilter(scene, DEPTH_M, filterTransmittance(kind, density)),
        })),
      );
      const best = all.reduce((a, b) => (b.split < a.split ? b : a));
      expect(way.lamp_filter_kind).toBe(best.kind);
      expect(way.lamp_filter_density).toBeCloseTo(best.density, 12);
      expect(way.split_left_delta_e00).toBeCloseTo(best.split, 6);
      const { world, daylight, lamps } = lightsOf(scene);
      const filtered = lampLightAt(world, {
        filter: filterTransmittance(best.kind, way.lamp_filter_density ?? 0),
      });
      const cost = Math.log2(illuminance_lx(add(daylight, lamps)) / illuminance_lx(add(daylight, filtered)));
      expect(way.cost_stops).toBeCloseTo(cost, 9);
    },
  );

  it("lets through, channel by channel, daylight over lamps, the clearest whole", () => {
    const scene = lit("IB");
    const { world, profile, daylight } = lightsOf(scene);
    const wanted = rawOf(profile, daylight).map(
      (value, k) => value / rawOf(profile, lampLightAt(world, CLEAR_LAMPS))[k],
    );
    const way = wayOf(scene, "lamp_filter");
    const shares = [
      way.lamp_filter_red_transmittance,
      way.lamp_filter_green_transmittance,
      way.lamp_filter_blue_transmittance,
    ];
    expect(Math.max(...shares.map(Number))).toBe(1);
    shares.forEach((share, k) => {
      expect(share).toBeCloseTo(wanted[k] / Math.max(...wanted), 12);
    });
    const { lamp_filter_kind: kind = "", lamp_filter_density: density = 0 } = way;
    const [red, green, blue] = shares.map(Number);
    const is_seen = way.split_left_delta_e00 > VISIBLE_SPLIT_DELTA_E00;
    expect([way.code, way.parameters]).toEqual(["lamp_filter", { red, green, blue, kind, density, is_seen }]);
    expect(way.lamp_filter_transmittance?.map(({ wavelength_nm }) => wavelength_nm)).toEqual([
      450, 475, 500, 525, 550, 575, 600, 625, 650,
    ]);
  });

  it("leaves of each lamp's flux what it passes of its light, whatever filter that wears today", () => {
    const bare = wayOf(lit("IB"), "lamp_filter");
    const filter = filterTransmittance(bare.lamp_filter_kind ?? "red", bare.lamp_filter_density ?? 0);
    const byHand = 4000 * illuminance_lx(multiply(whiteLampPerLumen(5600), filter));
    expect(illuminance_lx(multiply(whiteLampPerLumen(5600), CLEAR))).toBeCloseTo(1, 9);
    expect(bare.lamp_flux_left_lm?.[0]).toBeCloseTo(byHand, 6);
    const worn = wayOf(lit("IB", { filter_kind: "blue", filter_density: 0.3 }), "lamp_filter");
    expect(worn.lamp_filter_density).toBe(bare.lamp_filter_density);
    expect(worn.lamp_flux_left_lm?.[0]).toBeCloseTo(byHand, 6);
    // Nor does what the filter must let through depend on the one that it takes the place of.
    expect(worn.lamp_filter_red_transmittance).toBe(bare.lamp_filter_red_transmittance);
    expect(worn.lamp_filter_transmittance).toEqual(bare.lamp_filter_transmittance);
  });

  it("makes, as a curve, the lamps' light daylight's, wavelength by wavelength, 1 at its clearest", () => {
    const { world, daylight } = lightsOf(lit("3C"));
    const lamps = lampLightAt(world, CLEAR_LAMPS);
    const curve = wayOf(lit("3C"), "lamp_filter").lamp_filter_transmittance ?? [];
    const matched = curve.map(({ wavelength_nm, transmittance }) => {
      const i = (wavelength_nm - FIRST_NM) / STEP_NM;
      return (lamps[i] * transmittance) / daylight[i];
    });
    expect(Math.max(...curve.map(({ transmittance }) => transmittance))).toBe(1);
    for (const ratio of matched) expect(ratio / matched[0]).toBeCloseTo(1, 12);
  });

  it("is said to leave a visible split where it does: no plain kind matches the amber of 9C", () => {
    const way = wayOf(lit("9C"), "lamp_filter");
    expect(way.split_left_delta_e00).toBeGreaterThan(VISIBLE_SPLIT_DELTA_E00);
    expect(way.parameters).toMatchObject({ is_seen: true });
    const matched = wayOf(lit("IB"), "lamp_filter");
    expect(matched.split_left_delta_e00).toBeLessThan(VISIBLE_SPLIT_DELTA_E00);
    expect(matched.parameters).toMatchObject({ is_seen: false });
  });
});

describe("balancing to the lamps", () => {
  it("costs nothing, and leaves what daylight adds to their light", () => {
    const { daylight, lamps, profile } = lightsOf(lit("IB"));
    expect(wayOf(lit("IB"), "balance_to_lamps")).toEqual({
      way: "balance_to_lamps",
      code: "balance_to_lamps",
      parameters: {},
      split_left_delta_e00: castBetween(profile, lamps, add(daylight, lamps)),
      cost_stops: 0,
    });
  });
});

describe("balancing to both", () => {
  it("costs nothing, and leaves on what only daylight lights how far that is from the mix", () => {
    const { daylight, lamps, profile } = lightsOf(lit("IB"));
    expect(wayOf(lit("IB"), "balance_to_both")).toEqual({
      way: "balance_to_both",
      code: "balance_to_both",
      parameters: {},
      split_left_delta_e00: castBetween(profile, add(daylight, lamps), daylight),
      cost_stops: 0,
    });
  });
});

describe("coming closer", () => {
  it("is to the largest twentieth of today's distance at which the lamps hide daylight", () => {
    const scene = lit("IB", { distance_m: 2 });
    const { world, daylight, lamps, profile } = lightsOf(scene);
    const splitAt = (distance_m: number) => {
      const closer = lampLightAt(world, { distance_m });
      return castBetween(profile, closer, add(daylight, closer));
    };
    const way = wayOf(scene, "come_closer");
    const distance_m = way.lamp_distance_m ?? Number.NaN;
    expect(distance_m / 0.1).toBeCloseTo(Math.round(distance_m / 0.1), 9);
    expect(splitAt(distance_m)).toBeLessThanOrEqual(VISIBLE_SPLIT_DELTA_E00);
    expect(splitAt(distance_m + 0.1)).toBeGreaterThan(VISIBLE_SPLIT_DELTA_E00);
    expect(way.split_left_delta_e00).toBeCloseTo(splitAt(distance_m), 9);
    const after = add(daylight, lampLightAt(world, { distance_m }));
    expect(way.cost_stops).toBeCloseTo(
      Math.log2(illuminance_lx(add(daylight, lamps)) / illuminance_lx(after)),
      9,
    );
    expect(way.cost_stops).toBeLessThan(0);
    expect([way.code, way.parameters]).toEqual(["come_closer", { distance_m }]);
  });

  it("is no way where not even a tenth of the distance does, and starts from the nearest lamp", () => {
    const weak = waysOut(lightsOf(lit("IB", { flux_lm: 5 })));
    expect(weak.map(({ way }) => way)).not.toContain("come_closer");
    const scene = lit("IB", { distance_m: 0.8 });
    const farther = { ...scene, lamps: [...scene.lamps, { ...TWO_LAMPS, distance_m: 5, flux_lm: 100 }] };
    const share = (wayOf(farther, "come_closer").lamp_distance_m ?? Number.NaN) / 0.8;
    expect(share).toBeLessThan(1);
    expect(share * 20).toBeCloseTo(Math.round(share * 20), 9);
  });
});

it("the ways come by the split that they leave, then by what they cost", () => {
  for (const type of ["IB", "3C"]) {
    const ways = waysOut(lightsOf(lit(type, { distance_m: 2 })));
    const sorted = [...ways].sort(
      (a, b) => a.split_left_delta_e00 - b.split_left_delta_e00 || a.cost_stops - b.cost_stops,
    );
    expect(ways).toHaveLength(5);
    expect(ways).toEqual(sorted);
    expect(ways[0].way).toBe("lamps_off");
  }
});
