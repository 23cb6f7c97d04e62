import { atNight, daylightScene, NIGHT_WRECK, REEF_WITH_LAMPS, TWO_LAMPS } from "@sunfathom/fixtures/scenes";
import { describe, expect, it } from "vitest";
import type { Lamp, Scene } from "../scene/scene.js";
import { SceneProblem } from "../scene/scene-problem.js";
import { mixedLight } from "./mixed-light.js";

const with_ = (change: Partial<Lamp>, scene: Scene = REEF_WITH_LAMPS): Scene => ({
  ...scene,
  lamps: [{ ...TWO_LAMPS, ...change }],
});
const first = (scene: Scene) => mixedLight(scene).depths[0];
const green = (scene: Scene): number => first(scene).green_lamp_over_daylight_stops?.likely ?? Number.NaN;
const lux = (scene: Scene): number => first(scene).lamp_illuminance_lx.likely;

describe("the light of lamps", () => {
  it("doubles with their number and with their flux, and adds up over unlike lamps", () => {
    expect(lux(with_({ count: 4 })) / lux(REEF_WITH_LAMPS)).toBeCloseTo(2, 10);
    expect(lux(with_({ flux_lm: 8000 })) / lux(REEF_WITH_LAMPS)).toBeCloseTo(2, 10);
    const both = { ...REEF_WITH_LAMPS, lamps: [TWO_LAMPS, { ...TWO_LAMPS, cct_K: 3000, distance_m: 1.5 }] };
    expect(lux(both)).toBeCloseTo(lux(REEF_WITH_LAMPS) + lux(with_({ cct_K: 3000, distance_m: 1.5 })), 8);
  });

  it("falls by more than the square of the distance, because water takes its share", () => {
    const ratio = lux(with_({ distance_m: 1.6 })) / lux(REEF_WITH_LAMPS);
    expect(ratio).toBeLessThan(0.25);
    expect(ratio).toBeGreaterThan(0.25 * Math.exp(-0.8 * 0.3));
  });

  it("is stronger in the middle behind a flat port, where the beam narrows from the angle measured in air (Snell)", () => {
    // 100 degrees in air are 2 asin(sin 50 / 1.34) = 69.7 in water. Powers ln 0.5 / ln cos: 1.569 and 3.503; in the middle 4.503 / 2.569
    // = 1.75 times, and less over a subject that a narrow beam does not light evenly.
    const ratio = lux(with_({ beam_angle_medium: "air" })) / lux(REEF_WITH_LAMPS);
    expect(ratio).toBeLessThan(1.75);
    expect(ratio).toBeGreaterThan(1.55);
  });

  it("a filter on the lamp never adds light, whatever its kind, and the denser the less", () => {
    for (const filter_kind of ["red", "magenta", "blue", "neutral"] as const) {
      let last = lux(REEF_WITH_LAMPS);
      for (const filter_density of [0.15, 0.3, 0.9, 1.5, 3]) {
        const next = lux(with_({ filter_kind, filter_density }));
        expect(next).toBeLessThan(last);
        last = next;
      }
    }
  });
});

describe("lamps against daylight", () => {
  it("gain on daylight with depth, in every channel and most in red", () => {
    const { depths } = mixedLight({ ...REEF_WITH_LAMPS, min_depth_m: 2, max_depth_m: 26 });
    for (let i = 1; i < depths.length; i++) {
      for (const channel of ["red", "green", "blue"] as const) {
        const key = `${channel}_lamp_over_daylight_stops` as const;
        expect(depths[i][key]?.likely ?? Number.NaN).toBeGreaterThan(
          depths[i - 1][key]?.likely ?? Number.NaN,
        );
      }
      expect(depths[i].red_lamp_over_daylight_stops?.likely).toBeGreaterThan(
        depths[i].green_lamp_over_daylight_stops?.likely ?? 0,
      );
    }
  });

  it("balanced to daylight, what a white lamp lights turns too red (common practice, no published source)", () => {
    for (const type of ["I", "IB", "II", "III"]) {
      for (const depth of [8, 12, 20]) {
        const { red_excess_stops, split_delta_e00 } = first({
          ...daylightScene(type, 50, depth),
          lamps: [TWO_LAMPS],
        });
        expect(red_excess_stops?.likely).toBeGreaterThan(0.2);
        expect(split_delta_e00?.likely).toBeGreaterThan(3);
      }
    }
  });

  it("with a filter on the lamp that matches daylight the split shrinks (common practice, no published source)", () => {
    const way = first(REEF_WITH_LAMPS).ways_out.find((w) => w.way === "lamp_filter");
    if (!way?.lamp_filter_kind || way.lamp_filter_density === undefined) throw new Error("no lamp filter");
    const filtered = first(
      with_({ filter_kind: way.lamp_filter_kind, filter_density: way.lamp_filter_density }),
    );
    expect(filtered.split_delta_e00?.likely).toBeCloseTo(way.split_left_delta_e00, 8);
    expect(filtered.split_delta_e00?.likely).toBeLessThan(
      (first(REEF_WITH_LAMPS).split_delta_e00?.likely ?? 0) / 3,
    );
    // What is promised to be left of a lamp's flux is what its filter passes.
    expect(way.lamp_flux_left_lm?.[0]).toBeGreaterThan(0);
    expect(way.lamp_flux_left_lm?.[0]).toBeLessThan(4000);
  });

  it.each(["IB", "II", "1C", "5C", "7C", "9C"])(
    "%s: says of a lamp filter whether what it leaves is seen at a glance",
    (type) => {
      // Bright enough to fight with daylight in every one of these waters.
      const scene = with_({ flux_lm: 6000 }, daylightScene(type, 50, 5));
      const way = first(scene).ways_out.find((w) => w.way === "lamp_filter");
      if (!way) throw new Error("no lamp filter");
      expect(way.parameters).toMatchObject({ is_seen: way.split_left_delta_e00 > 5 });
    },
  );

  it("has no plain kind that matches amber daylight: blue and green lamp filters are made for other waters", () => {
    const way = first(with_({}, daylightScene("9C", 50, 5))).ways_out.find((w) => w.way === "lamp_filter");
    expect(way?.lamp_filter_blue_transmittance).toBeLessThan(way?.lamp_filter_green_transmittance ?? 0);
    expect(way?.split_left_delta_e00).toBeGreaterThan(5);
  });

  it("needs of a matching filter least in red and most in the channel that water passes best", () => {
    const way = first(REEF_WITH_LAMPS).ways_out.find((w) => w.way === "lamp_filter");
    const [red, green_, blue] = [
      way?.lamp_filter_red_transmittance,
      way?.lamp_filter_green_transmittance,
      way?.lamp_filter_blue_transmittance,
    ];
    expect(blue).toBe(1);
    expect(red).toBeLessThan(green_ ?? 0);
  });

  it("coming as close as advised makes the lamps lead", () => {
    const way = first(REEF_WITH_LAMPS).ways_out.find((w) => w.way === "come_closer");
    if (way?.lamp_distance_m === undefined) throw new Error("no way to come closer");
    expect(first(with_({ distance_m: way.lamp_distance_m })).verdict).toBe("lamps_lead");
    expect(way.cost_stops).toBeLessThan(0);
  });

  it("ways out are listed by what they leave, and none where the lights do not fight", () => {
    const { ways_out } = first(REEF_WITH_LAMPS);
    expect(ways_out.map((w) => w.way)).toContain("lamps_off");
    for (let i = 1; i < ways_out.length; i++) {
      expect(ways_out[i].split_left_delta_e00).toBeGreaterThanOrEqual(ways_out[i - 1].split_left_delta_e00);
    }
    expect(first(NIGHT_WRECK).ways_out).toEqual([]);
    expect(first(daylightScene("IB", 50, 12)).ways_out).toEqual([]);
  });

  it("goes from daylight leading through a fight to lamps leading as the lamps are made stronger", () => {
    const order = ["daylight_leads", "lights_fight", "lamps_lead"];
    const met = Array.from(
      { length: 18 },
      (_, i) => first(with_({ flux_lm: 10 * 2 ** i, count: 1 })).verdict,
    );
    const ranks = met.map((v) => order.indexOf(v));
    expect(ranks).toEqual([...ranks].sort((a, b) => a - b));
    expect(new Set(met)).toEqual(new Set(order));
    expect(green(with_({ flux_lm: 10, count: 1 }))).toBeLessThan(green(with_({ flux_lm: 100, count: 1 })));
  });

  it("depth does not matter where lamps are the only light (common practice, no published source)", () => {
    const at = (depth: number) => first({ ...atNight(daylightScene("1C", 45, depth)), lamps: [TWO_LAMPS] });
    expect({ ...at(40), depth_m: 5 }).toEqual(at(5));
  });

  it("the water between shifts a lamp's colour: about 0.85 stop of red at 650 nm over 1.6 m (common practice)", () => {
    // Pope & Fry 1997: a_w(650) = 0.340 per m; 0.340 * 1.6 / ln 2 = 0.785 stop, and a little scattering.
    const { lamp_red_water_loss_stops, lamp_green_water_loss_stops } = first({
      ...NIGHT_WRECK,
      subject_distance_m: 0.8,
    });
    expect(lamp_red_water_loss_stops?.likely).toBeGreaterThan(lamp_green_water_loss_stops?.likely ?? 0);
    expect(lamp_red_water_loss_stops?.likely).toBeGreaterThan(0.3);
    expect(lamp_red_water_loss_stops?.likely).toBeLessThan(0.85);
  });

  it("is refused where there is no light at all", () => {
    expect(() => mixedLight(atNight(daylightScene("IB", 45, 10)))).toThrow(SceneProblem);
  });
});
