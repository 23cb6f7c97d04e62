// What is said must be what was computed, and be said where it holds.

import { BRIGHT_REEF, daylightScene, NIGHT_WRECK } from "@sunfathom/fixtures/scenes";
import { describe, expect, it } from "vitest";
import type { ExposureLossAnswer } from "../result/exposure-loss.js";
import type { Scene } from "../scene/scene.js";
import { exposureLoss } from "./exposure-loss.js";
import { meteredOnSubject } from "./sensitivity.js";

const DARK: Scene = { ...daylightScene("5C", 15, 12), max_iso: 200 };
const codesOf = ({ reasons }: ExposureLossAnswer) => reasons.map(({ code }) => code);
const parametersOf = ({ reasons }: ExposureLossAnswer, code: string, nth = 0) =>
  (reasons.filter((reason) => reason.code === code)[nth]?.parameters ?? {}) as Readonly<
    Record<string, number>
  >;

describe("the reasons of an exposure", () => {
  it("say what fits at both ends of a range, and once at a single depth", () => {
    const range = exposureLoss(daylightScene("IB", 45, 5, 10));
    expect(codesOf(range).filter((code) => code === "exposure_fits")).toHaveLength(2);
    [range.depths[0], range.depths[range.depths.length - 1]].forEach((end, n) => {
      expect(parametersOf(range, "exposure_fits", n)).toEqual({
        depth_m: end.depth_m,
        iso: end.iso,
        f_number: end.f_number,
        ev: meteredOnSubject(end),
      });
    });
    const single = codesOf(exposureLoss(daylightScene("IB", 45, 5)));
    expect(single.filter((code) => code === "exposure_fits")).toHaveLength(1);
    expect(single).not.toContain("too_dark");
    expect(single).not.toContain("too_bright");
  });

  it("say at the shallow end by how much it is too bright, and that an aperture which the scene fixes can close", () => {
    const answer = exposureLoss({ ...BRIGHT_REEF, max_f_number: 32, max_depth_m: 8 });
    const [top] = answer.depths;
    expect(parametersOf(answer, "too_bright")).toEqual({
      depth_m: 5,
      excess_stops: top.excess_stops?.likely,
      iso: 400,
      f_number: 5.6,
      density: top.neutral_density_needed,
    });
    expect(parametersOf(answer, "aperture_can_close")).toEqual({ f_number: top.f_number_needed });
    expect(codesOf(answer)).not.toContain("too_dark");
    // With a lens that closes no further, or not far enough, closing it is no answer.
    for (const max_f_number of [5.6, 5.7]) {
      const codes = codesOf(exposureLoss({ ...BRIGHT_REEF, max_f_number }));
      expect(codes).toContain("too_bright");
      expect(codes).not.toContain("aperture_can_close");
    }
  });

  it("say at the deep end how much is missing, and that any filter would make it worse", () => {
    const answer = exposureLoss({ ...DARK, min_depth_m: 11 });
    const deepest = answer.depths[answer.depths.length - 1];
    expect(parametersOf(answer, "too_dark")).toEqual({
      depth_m: 12,
      shortfall_stops: deepest.shortfall_stops?.likely,
      iso: 200,
      f_number: 2.8,
    });
    expect(codesOf(answer)).toContain("any_filter_would_worsen");
    expect(codesOf(answer)).not.toContain("filter_makes_it_darker");
  });

  it("say what the filter takes where it is dark and one is on", () => {
    const answer = exposureLoss({ ...DARK, filter_kind: "magenta", filter_density: 0.6 });
    const [depth] = answer.depths;
    expect(parametersOf(answer, "filter_makes_it_darker")).toEqual({
      stops: depth.lens_filter_loss_stops.likely,
    });
    expect(codesOf(answer)).not.toContain("any_filter_would_worsen");
  });

  it("say what the port takes always, and what the water above takes by day alone", () => {
    const day = exposureLoss(daylightScene("IB", 45, 5, 10));
    const deepest = day.depths[day.depths.length - 1];
    expect(parametersOf(day, "port_takes")).toEqual({ stops: deepest.port_loss_stops.likely });
    expect(parametersOf(day, "water_takes_most")).toEqual({
      depth_m: 10,
      depth_stops: deepest.depth_loss_stops?.likely,
      total_stops: deepest.total_loss_stops?.likely,
    });
    const night = codesOf(exposureLoss(NIGHT_WRECK));
    expect(night).toContain("port_takes");
    expect(night).not.toContain("water_takes_most");
  });

  it("say that subject and whole picture ask for exposures more than a stop apart, by how much and which way", () => {
    // Against the sun the near subject is in shade, and the water behind it is not.
    const green = exposureLoss({
      ...daylightScene("3C", 25, 8),
      sun_side: "in_frame",
      subject_distance_m: 0.3,
    });
    const against = exposureLoss({
      ...daylightScene("1C", 25, 8),
      sun_side: "in_frame",
      subject_distance_m: 0.3,
    });
    const clear = exposureLoss(daylightScene("IB", 60, 8));
    for (const answer of [green, against]) {
      const [depth] = answer.depths;
      const stops = (depth.scene_exposure_value_ev100?.likely ?? Number.NaN) - meteredOnSubject(depth);
      expect(stops).toBeGreaterThan(1);
      expect(parametersOf(answer, "levels_apart")).toEqual({ depth_m: 8, stops });
    }
    expect(codesOf(clear)).not.toContain("levels_apart");
    expect(codesOf(exposureLoss(NIGHT_WRECK))).not.toContain("levels_apart");
    expect(exposureLoss(NIGHT_WRECK).depths[0]).not.toHaveProperty("scene_exposure_value_ev100");
  });

  it("say that cloud lights the side in shadow, against the sun, and nowhere else that it does", () => {
    const under = (cloud_oktas: number, sun_side: "in_frame" | "behind_camera") =>
      exposureLoss({ ...daylightScene("IB", 30, 1), cloud_oktas, sun_side });
    const [clear, cloudy] = [0, 4].map((oktas) => under(oktas, "in_frame"));
    const evOf = ({ depths }: ExposureLossAnswer) => depths[0].exposure_value_ev100.likely;
    expect(parametersOf(cloudy, "cloud_fills_shadow")["stops"]).toBeCloseTo(evOf(cloudy) - evOf(clear), 9);
    expect(evOf(cloudy)).toBeGreaterThan(evOf(clear));
    for (const answer of [clear, under(8, "in_frame"), under(4, "behind_camera")])
      expect(codesOf(answer)).not.toContain("cloud_fills_shadow");
  });

  it("say that haze is the limit where less than 30 % of the contrast is left, and only there", () => {
    const at = (subject_distance_m: number) =>
      exposureLoss({ ...daylightScene("3C", 50, 5), subject_distance_m });
    for (const distance_m of [0.3, 0.6, 1, 1.5, 2, 3, 5]) {
      const answer = at(distance_m);
      const left = answer.depths[0].contrast_left_percent.likely;
      expect(codesOf(answer).includes("haze_is_the_limit")).toBe(left < 30);
    }
    const far = at(5);
    expect(parametersOf(far, "haze_is_the_limit")).toEqual({
      distance_m: 5,
      contrast_percent: far.depths[0].contrast_left_percent.likely,
    });
    expect(codesOf(at(0.3))).not.toContain("haze_is_the_limit");
  });
});

describe("each reason of an exposure", () => {
  const scenes: Scene[] = [
    daylightScene("IB", 45, 5, 10),
    { ...BRIGHT_REEF, max_depth_m: 8 },
    { ...BRIGHT_REEF, max_f_number: 5.6 },
    DARK,
    { ...DARK, filter_kind: "magenta", filter_density: 0.6 },
    { ...daylightScene("3C", 50, 5), subject_distance_m: 5 },
    { ...daylightScene("1C", 25, 8), sun_side: "in_frame", subject_distance_m: 0.3 },
  ];

  it("is told as computed, but for the bound of haze, which is a judgement", () => {
    const told = new Set<string>();
    for (const { code, basis } of scenes.flatMap((scene) => exposureLoss(scene).reasons)) {
      told.add(code);
      const wanted = code === "haze_is_the_limit" ? "judgement" : "computed";
      expect({ code, basis }).toEqual({ code, basis: wanted });
    }
    expect(told.size).toBeGreaterThanOrEqual(9);
  });

  it("says that it fits at the end that fits alone", () => {
    const range = exposureLoss({ ...DARK, min_depth_m: 3 });
    expect(range.depths[0].verdict).toBe("fits");
    expect(codesOf(range).filter((code) => code === "exposure_fits")).toHaveLength(1);
  });
});

describe("what an exposure's figures leave out", () => {
  it("is what there is none of: daylight's losses at night, a lamp filter's without lamps", () => {
    const [night] = exposureLoss(NIGHT_WRECK).depths;
    const [day] = exposureLoss(daylightScene("IB", 45, 5)).depths;
    const ofDaylight = ["surface_loss_stops", "depth_loss_stops", "upright_loss_stops", "total_loss_stops"];
    for (const name of ofDaylight) {
      expect(day).toHaveProperty(name);
      expect(night).not.toHaveProperty(name);
    }
    expect(night).toHaveProperty("lamp_filter_loss_stops");
    expect(day).not.toHaveProperty("lamp_filter_loss_stops");
  });

  it("is the doubt about a filter's shape where none is mounted or its curve is measured, and the sensor's always", () => {
    const causes = (change: Partial<Scene>) =>
      exposureLoss({ ...daylightScene("IB", 45, 5), ...change }).uncertainty.map(({ code }) => code);
    const flat = [400, 700].map((wavelength_nm) => ({ wavelength_nm, transmittance: 0.25 }));
    expect(causes({ filter_kind: "red", filter_density: 0.9 })).toContain("filter_edge");
    for (const change of [{}, { filter_kind: "red", filter_transmittance: flat } as const]) {
      expect(causes(change)).not.toContain("filter_edge");
    }
    for (const change of [{}, { filter_kind: "red", filter_density: 0.9 } as const]) {
      expect(causes(change)).not.toContain("sensor");
      expect(causes(change)).not.toContain("full_well");
    }
  });

  it("is not a lamp filter's loss: nothing where none is mounted, and two stops where one lets a quarter through", () => {
    const lampLoss = (change: object) =>
      exposureLoss({ ...NIGHT_WRECK, lamps: [{ ...NIGHT_WRECK.lamps[0], ...change }] }).depths[0]
        .lamp_filter_loss_stops?.likely;
    expect(lampLoss({})).toBeCloseTo(0, 12);
    const quarter = [400, 700].map((wavelength_nm) => ({ wavelength_nm, transmittance: 0.25 }));
    expect(lampLoss({ filter_kind: "blue", filter_transmittance: quarter })).toBeCloseTo(2, 9);
  });
});
