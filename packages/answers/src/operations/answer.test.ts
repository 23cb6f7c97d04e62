import { attenuationAnswerForm, type Scene, sceneExamples } from "@sunfathom/contract";
import { attenuation, MODEL_VERSION } from "@sunfathom/planner";
import { en } from "@sunfathom/words/en";
import { sceneProblems } from "@sunfathom/words/en/problems";
import { describe, expect, it } from "vitest";
import { calculations } from "../generated/calculations.js";
import { said } from "../problem/say-refusal.js";
import { lightScene } from "../scene/light-scene.js";
import { contractAjv } from "../shape/contract-ajv.test-support.js";
import { toJson } from "../shape/to-json.js";
import { taking } from "./calculation.js";
import { say } from "./calculations/attenuation.js";
import { answer, calculationOf } from "./in-english.test-support.js";

/** Scenes at the edges of what a caller can say. */
const edges: Record<string, Scene> = {
  turbid: { water_type: "9C", min_depth_m: 0.1, max_depth_m: 10 },
  clear_and_bright: { water_type: "I", depth_m: 0.1, sun_elevation_deg: 90, iso: 400, f_number: 5.6 },
  overcast: { water_type: "II", depth_m: 10, cloud_oktas: 8, wind_speed_m_s: 20 },
  measured_water: {
    kd_samples: [
      { wavelength_nm: 400, kd_per_m: 0.05 },
      { wavelength_nm: 550, kd_per_m: 0.09 },
      { wavelength_nm: 700, kd_per_m: 0.7 },
    ],
    min_depth_m: 3,
    max_depth_m: 30,
  },
  plankton: { chlorophyll_mg_m3: 0.3, depth_m: 10 },
  disc: { secchi_depth_m: 12, water_hue: "blue_green", depth_m: 10 },
  visibility: { visibility_m: 8, water_hue: "green", depth_m: 6, subject_facing: "sun" },
  card: {
    card_samples: [
      { depth_m: 3, red: 0.24, green: 0.36, blue: 0.38 },
      { depth_m: 9, red: 0.09, green: 0.24, blue: 0.31 },
    ],
    transfer_curve: "linear",
    locked_exposure: true,
    locked_balance: true,
    depth_m: 10,
  },
  place_and_time: {
    water_type: "IB",
    depth_m: 12,
    daylight_basis: "place_time",
    latitude_deg: -47.3,
    longitude_deg: -128.4,
    local_time: "2027-01-10T10:15",
    time_zone: "Etc/GMT+9",
  },
  night_by_the_clock: {
    water_type: "IB",
    depth_m: 12,
    daylight_basis: "place_time",
    latitude_deg: -47.3,
    longitude_deg: -128.4,
    time: "2026-06-10T22:15:00-09:00",
    lamp_flux_lm: 4000,
    lamp_distance_m: 0.8,
    frame_rate_fps: 24,
  },
  measured_filter: {
    water_type: "IB",
    depth_m: 12,
    filter_transmittance: [
      { wavelength_nm: 400, transmittance: 0.2 },
      { wavelength_nm: 600, transmittance: 0.9 },
    ],
  },
  owned_filters: {
    water_type: "IB",
    min_depth_m: 2,
    max_depth_m: 18,
    filter_change_underwater: "flip",
    balance_tolerance_delta_e00: 4,
    kit: [
      { id: "r6", item: "lens_filter", filter_kind: "red", filter_density: 0.6 },
      {
        id: "measured",
        item: "lens_filter",
        filter_transmittance: [
          { wavelength_nm: 400, transmittance: 0.2 },
          { wavelength_nm: 600, transmittance: 0.9 },
        ],
      },
      { id: "torch", item: "lamp" },
    ],
  },
  nothing_owned: { water_type: "IB", depth_m: 12, kit: [] },
  filtered_lamp: {
    water_type: "III",
    depth_m: 8,
    filter_kind: "magenta",
    filter_density: 0.4,
    lamps: [{ flux_lm: 1, distance_m: 20, led: "LED-RGB1", filter_kind: "blue", filter_density: 3 }],
  },
};
const scenes: Record<string, Scene> = {
  ...Object.fromEntries(Object.entries(sceneExamples).map(([name, { scene }]) => [name, scene])),
  ...edges,
};

/** Every text with a space in it, however deep. */
const textsIn = (value: unknown): string[] =>
  typeof value === "string"
    ? value.includes(" ")
      ? [value]
      : []
    : typeof value === "object" && value !== null
      ? Object.values(value).flatMap(textsIn)
      : [];

const ofLight = calculations.filter(({ request }) => request === "Scene");

describe.each(ofLight)("$name", ({ name, answer: component }) => {
  it.each(Object.keys(scenes))("answers %s, and keeps its own description", (key) => {
    const answered = answer(name, scenes[key]);
    if (answered.status !== "ok") throw new Error(JSON.stringify(answered.problem));
    const validate = contractAjv.getSchema(component);
    expect(validate?.(JSON.parse(toJson(answered.body))), contractAjv.errorsText(validate?.errors)).toBe(
      true,
    );
  });

  it.each(Object.keys(scenes))("says %s in sentences", (key) => {
    const answered = answer(name, scenes[key]);
    if (answered.status !== "ok") throw new Error("no answer");
    const { reasons, cautions, uncertainty } = answered.body as Record<string, Record<string, string>[]>;
    for (const { text } of [...reasons, ...cautions]) expect(text).toMatch(/^[A-Z].*\.$/);
    for (const { text, how_to_shrink } of uncertainty) {
      expect(text).toMatch(/^[A-Z].*[^.]$/);
      expect(how_to_shrink).toMatch(/^[A-Z].*\.$/);
    }
    for (const text of textsIn(answered.body)) expect(text).not.toMatch(/NaN|undefined|Infinity|\[object/);
  });

  it("gives the same bytes for scenes that mean the same", () => {
    const { scene } = sceneExamples.reef_with_lamps;
    const first = answer(name, scene);
    if (first.status !== "ok") throw new Error("no answer");
    const resolved = JSON.parse(toJson(first.body)).scene;
    const { assumed, ...again } = resolved;
    expect(assumed).toContain("bits");
    const second = answer(name, again);
    if (second.status !== "ok") throw new Error("no answer");
    const { links, ...said } = JSON.parse(toJson(second.body));
    const { links: shorter, ...same } = JSON.parse(toJson(first.body));
    expect(said).toEqual({ ...same, scene: { ...again, assumed: [] } });
    // Links tell what was told.
    expect(links.map(({ name }: { name: string }) => name)).toEqual(
      shorter.map(({ name }: { name: string }) => name),
    );
  });
});

describe("the door", () => {
  const scene: Scene = { water_type: "IB", depth_m: 12 };

  it("refuses what is not valid, and says all that is wrong", () => {
    const refused = answer("attenuation", { water_type: "1B", dept_m: 5 });
    expect(refused).toEqual({
      status: "problem",
      problem: {
        type: "/problems/invalid-scene",
        status: 400,
        code: "invalid_scene",
        title: expect.stringMatching(/^[A-Z].+\.$/),
        detail: expect.stringMatching(/^\/water_type: .*\b1\b/),
        errors: [
          expect.objectContaining({ pointer: "/water_type", code: "not_an_option" }),
          expect.objectContaining({ pointer: "/dept_m", code: "unknown_field", did_you_mean: "depth_m" }),
        ],
      },
    });
  });

  it("answers for the version of the model that it is asked for, and for no other", () => {
    expect(answer("attenuation", { ...scene, expect_model_version: MODEL_VERSION }).status).toBe("ok");
    const refused = answer("attenuation", { ...scene, expect_model_version: "1999.1.1" });
    expect(refused).toMatchObject({ problem: { code: "model_version_mismatch", status: 409 } });
    if (refused.status === "problem") expect(refused.problem.detail).toContain(MODEL_VERSION);
  });

  it("says where a valid scene leads outside the model", () => {
    const refused = answer("attenuation", { ...scene, sun_elevation_deg: 0 });
    expect(refused).toMatchObject({ problem: { code: "outside_the_model", status: 422 } });
    if (refused.status === "problem") {
      expect(refused.problem.errors?.[0]).toMatchObject({ pointer: "/sun_elevation_deg" });
    }
  });

  it("computes nothing before it is asked to", () => {
    let computed = 0;
    const calculation = taking(lightScene)({
      name: "attenuation",
      form: attenuationAnswerForm,
      plan: (of) => {
        computed += 1;
        return attenuation(of);
      },
      say,
    }).in(en.attenuation, said(sceneProblems));
    const prepared = calculation.prepare(scene);
    expect(prepared.status).toBe("ready");
    expect(computed).toBe(0);
    if (prepared.status === "ready") expect(prepared.compute().status).toBe("ok");
    expect(computed).toBe(1);
  });

  it("reports errors of the reading along with those of the scene", () => {
    const found = [
      { pointer: "/iso", code: "not_a_number", message: "This is no number.", allowed: "a number" },
    ];
    const prepared = calculationOf("attenuation").prepare({ water_type: "IB" }, found);
    if (prepared.status !== "problem") throw new Error("The scene passed.");
    expect(prepared.problem.errors?.map(({ code }) => code)).toEqual(["not_a_number", "one_depth"]);
  });
});
