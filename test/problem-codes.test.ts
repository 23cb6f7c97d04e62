// Guards that the codes of problems are one catalogue: thrown, explained under /problems, described, and true in examples.
import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { calculationOf } from "../packages/answers/src/operations/in-english.test-support.js";
import { type OutsideCode, outsideCodes, problemCodes } from "../packages/contract/src/index.js";
import type { SceneRefusalCode } from "../packages/planner/src/index.js";
import { outsideLight, outsideMeanings, outsideMounting, problemPage } from "../packages/words/src/index.js";
import { describedExamples } from "./support/described-examples.js";

const attenuation = calculationOf("attenuation");
const colourRecovery = calculationOf("colour-recovery");
const diveAdvice = calculationOf("dive-advice");
const exposureLoss = calculationOf("exposure-loss");
const filterChoice = calculationOf("filter-choice");
const filterMounting = calculationOf("filter-mounting");
const mixedLight = calculationOf("mixed-light");
const whiteBalance = calculationOf("white-balance");

const base = { water_type: "IB", depth_m: 12 };
const there = { ...base, latitude_deg: 27.8, longitude_deg: 34.3 };
const murk = {
  kd_samples: [
    { wavelength_nm: 400, kd_per_m: 5 },
    { wavelength_nm: 700, kd_per_m: 5 },
  ],
};
const card = (depth_m: number, [red, green, blue]: readonly number[]) => ({ depth_m, red, green, blue });
const cards = (...card_samples: object[]) => ({
  card_samples,
  transfer_curve: "linear",
  locked_exposure: true,
  locked_balance: true,
  depth_m: 5,
});
const grey = [0.2, 0.3, 0.4] as const;
const opaque = [380, 780].map((wavelength_nm) => ({ wavelength_nm, transmittance: 0 }));
const mount = { port_kind: "flat", lens_kind: "wide" };
const fisheye = { port_kind: "flat", lens_kind: "fisheye" };
const ring = { id: "a", from_mm: 67, to_mm: 77, thickness_mm: 3 };

type Replies = Pick<typeof attenuation, "reply">;

/** For each code, scenes that meet it. */
const outside: Record<OutsideCode, [calculation: Replies, scene: object][]> = {
  instant_out_of_range: [[attenuation, { ...there, time: "1850-03-10T10:15:00Z" }]],
  local_time_malformed: [
    [filterChoice, { ...there, local_time: "1850-03-10T10:15", time_zone: "Africa/Cairo" }],
  ],
  local_time_skipped: [
    [exposureLoss, { ...there, local_time: "2026-03-29T02:30", time_zone: "Europe/Berlin" }],
  ],
  time_zone_unknown: [[diveAdvice, { ...there, local_time: "2026-03-10T10:15", time_zone: "Atlantis" }]],
  secchi_depth_out_of_range: [[whiteBalance, { secchi_depth_m: 89, water_hue: "blue", depth_m: 5 }]],
  visibility_out_of_range: [[attenuation, { visibility_m: 110, water_hue: "blue", depth_m: 5 }]],
  water_hue_contradicts_measure: [[attenuation, { visibility_m: 1, water_hue: "blue", depth_m: 5 }]],
  card_samples_too_few: [[attenuation, cards(card(3, grey), card(4, grey))]],
  card_samples_malformed: [
    [attenuation, cards(card(3, grey), card(7, [0.999, 0.3, 0.4]))],
    [attenuation, cards(card(3, grey), card(7, [0.00001, 0.3, 0.4]))],
    [attenuation, { ...cards(card(3, grey), card(7, grey)), locked_balance: false }],
  ],
  card_samples_contradict: [
    [attenuation, cards(card(2, grey), card(5, [0.9, 0.1, 0.01]), card(9, [0.01, 0.9, 0.02]))],
  ],
  card_samples_outside_family: [[attenuation, cards(card(3, grey), card(5, [0.14, 0.3, 0.41]))]],
  sun_too_low: [[mixedLight, { ...base, sun_elevation_deg: 1 }]],
  no_light: [
    [colourRecovery, { ...base, daylight_basis: "none" }],
    [
      filterChoice,
      {
        ...base,
        filter_transmittance: [380, 729, 731, 780].map((wavelength_nm) => ({
          wavelength_nm,
          transmittance: wavelength_nm > 730 ? 1 : 0,
        })),
      },
    ],
  ],
  no_balance: [
    [
      whiteBalance,
      {
        kd_samples: [
          { wavelength_nm: 549, kd_per_m: 20 },
          { wavelength_nm: 554, kd_per_m: 0.02 },
          { wavelength_nm: 566, kd_per_m: 0.02 },
          { wavelength_nm: 571, kd_per_m: 20 },
        ],
        depth_m: 80,
      },
    ],
  ],
  no_daylight_left: [[attenuation, { ...murk, depth_m: 100 }]],
  no_sight: [[filterChoice, { ...murk, depth_m: 1, subject_distance_m: 20 }]],
  filter_opaque: [
    [exposureLoss, { ...base, filter_transmittance: opaque }],
    [filterChoice, { ...base, kit: [{ id: "a", item: "lens_filter", filter_transmittance: opaque }] }],
  ],
  corner_outside_image_circle: [
    [filterMounting, { ...fisheye, focal_length_mm: 8, sensor_diagonal_mm: 43.27 }],
  ],
  field_too_wide: [[filterMounting, { ...fisheye, field_of_view_deg: 180 }]],
  lens_contradicts: [
    [filterMounting, { ...mount, focal_length_mm: 16, sensor_diagonal_mm: 43.27, field_of_view_deg: 60 }],
  ],
};

/** Codes for callers of the model itself: a scene that would meet them has been refused by the contract. */
const guarded: Record<Exclude<SceneRefusalCode, OutsideCode>, [calculation: Replies, scene: object]> = {
  latitude_out_of_range: [attenuation, { ...there, latitude_deg: 91, time: "2026-03-10T10:15:00Z" }],
  longitude_out_of_range: [attenuation, { ...there, longitude_deg: 181, time: "2026-03-10T10:15:00Z" }],
  chlorophyll_out_of_range: [attenuation, { chlorophyll_mg_m3: 21, depth_m: 5 }],
  lamp_unknown: [mixedLight, { ...base, lamps: [{ flux_lm: 4000, distance_m: 1, led: "candle" }] }],
  water_missing: [attenuation, { depth_m: 5 }],
  lens_field_unknown: [filterMounting, mount],
  ring_id_twice: [filterMounting, { ...mount, field_of_view_deg: 90, rings: [ring, ring] }],
};

function problemOf([calculation, scene]: [Replies, object]) {
  const replied = calculation.reply(scene);
  if (replied.status !== "problem") throw new Error("The scene was answered.");
  return replied.problem;
}

describe("what lies outside the model", () => {
  it.each(outsideCodes)("as %s is met by a scene, with its text and what the text is made of", (code) => {
    expect(outside[code].length).toBeGreaterThan(0);
    for (const scene of outside[code]) {
      const { code: kind, errors = [] } = problemOf(scene);
      expect([kind, errors.map((error) => error.code)]).toEqual(["outside_the_model", [code]]);
      const [error] = errors;
      expect(error?.message).toMatch(/^\S.{9}/);
      expect(error?.allowed).toMatch(/^\S.{3}/);
      expect(Object.keys(error?.parameters ?? {}).length).toBeGreaterThan(0);
    }
  });

  it("has a text and a meaning for each code, and for none that nobody meets", () => {
    const codes = [...outsideCodes].sort();
    expect([...Object.keys(outsideLight), ...Object.keys(outsideMounting)].sort()).toEqual(codes);
    expect(Object.keys(outsideMeanings).sort()).toEqual(codes);
  });

  it.each(Object.entries(guarded))("as %s is kept off by the contract", (_code, scene) => {
    expect(problemOf(scene).code).toBe("invalid_scene");
  });
});

const explained = problemCodes.flatMap((code) => (problemPage(code).errors ?? []).map((error) => error.code));

describe("the codes of errors", () => {
  it("of what lies outside the model are explained under /problems", () => {
    expect(problemPage("outside_the_model").errors?.map(({ code }) => code)).toEqual(outsideCodes);
  });

  it("are described as the ones that are explained, and no others", () => {
    const { components } = JSON.parse(
      readFileSync(new URL("../openapi/openapi.json", import.meta.url), "utf8"),
    );
    const described: string[] = components.schemas.FieldError.properties.code.examples;
    expect([...described].sort()).toEqual([...new Set(explained)].sort());
  });

  it("have the meanings that the examples of pages show", () => {
    const meanings = problemCodes.flatMap((code) => problemPage(code).errors ?? []);
    const shown = describedExamples("code", "meaning");
    expect(shown.length).toBeGreaterThan(0);
    for (const example of shown) expect(meanings).toContainEqual(example);
    const { title, explanation, meaning } = pageExamples();
    expect(problemPage("invalid_scene").title).toBe(title);
    expect(problemPage("malformed_json").explanation).toBe(explanation);
    expect(meanings.map((one) => one.meaning)).toContain(meaning);
  });

  it("are true in every example of the description", () => {
    const errors = describedExamples("pointer", "code", "message");
    expect(errors.length).toBeGreaterThan(10);
    for (const { code } of errors) expect(explained).toContain(code);
  });
});

/** What the description shows as examples of a page's texts. */
function pageExamples() {
  const { components } = JSON.parse(
    readFileSync(new URL("../openapi/openapi.json", import.meta.url), "utf8"),
  );
  const { ProblemPage, ErrorMeaning } = components.schemas;
  return {
    title: ProblemPage.properties.title.examples[0],
    explanation: ProblemPage.properties.explanation.examples[0],
    meaning: ErrorMeaning.properties.meaning.examples[0],
  };
}
