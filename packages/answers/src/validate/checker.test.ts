import { type ComponentName, wireSchemas } from "@sunfathom/contract";
import { sceneProblems } from "@sunfathom/words/en/problems";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { invalidScene } from "../problem/problem.js";
import { lightSceneWith } from "../scene/light-scene.js";
import { mountedOn } from "../scene/mounted-on.js";
import { contractAjv } from "../shape/contract-ajv.test-support.js";
import { accepts } from "./accepts.js";
import { checkOf, compile, compileReferring } from "./checker.js";
import { Findings } from "./findings.js";

function errorsOf(component: ComponentName, value: unknown) {
  const findings = new Findings();
  checkOf(component)(value, "", findings);
  return findings.none ? [] : (invalidScene(findings, sceneProblems, sceneProblems.checks).errors ?? []);
}

const { schema: sceneSchema } = lightSceneWith(mountedOn);
const names = Object.keys(wireSchemas.Scene.properties ?? {});
const number = fc.oneof(
  fc.double({ noNaN: true, noDefaultInfinity: true }),
  fc.integer({ min: -1, max: 101 }),
  fc.constantFrom(0.05, 8, 8.5, 25, 90, 100, 500, 5600),
);
const word = fc.oneof(
  fc.string({ maxLength: 5 }),
  fc.constantFrom(
    "IB",
    "red",
    "sun",
    "none",
    "water",
    "LED-B1",
    "2026-03-10T10:15:00Z",
    "𝄞".repeat(64),
    "𝄞".repeat(65),
  ),
);
const scalar = fc.oneof(number, word, fc.boolean(), fc.constant(null));
const lamp = fc.record(
  {
    flux_lm: fc.oneof({ weight: 5, arbitrary: fc.integer({ min: 0, max: 5000 }) }, scalar),
    distance_m: fc.oneof({ weight: 5, arbitrary: fc.constant(0.8) }, scalar),
    count: fc.oneof(number, scalar),
    filter_kind: word,
    other: scalar,
  },
  { requiredKeys: [] },
);
const sample = fc.record({ wavelength_nm: fc.integer({ min: 370, max: 790 }), kd_per_m: number });
const value = fc.oneof(scalar, fc.array(lamp, { maxLength: 3 }), fc.array(sample, { maxLength: 3 }), lamp);
const scene = fc.dictionary(
  fc.oneof(
    { weight: 20, arbitrary: fc.constantFrom(...names) },
    fc.string({ maxLength: 4 }),
    fc.constant("__proto__"),
  ),
  value,
  { maxKeys: 3 },
);

describe("the check of a scene", () => {
  it("accepts and refuses what Ajv accepts and refuses", () => {
    const validate = contractAjv.getSchema("Scene");
    let accepted = 0;
    fc.assert(
      fc.property(scene, (raw) => {
        // As it comes from outside: own members only.
        const parsed: unknown = JSON.parse(JSON.stringify(raw));
        const isValid = validate?.(parsed);
        if (isValid) accepted += 1;
        expect(errorsOf("Scene", parsed).length === 0, JSON.stringify(parsed)).toBe(isValid);
        // The same without the reasons.
        expect(accepts(sceneSchema)(parsed), JSON.stringify(parsed)).toBe(isValid);
      }),
      { numRuns: 3000, seed: 20 },
    );
    expect(accepted).toBeGreaterThan(300);
  });

  // The last of each is what the message tells of the value.
  it.each([
    [[], "wrong_type", "", ""],
    [null, "wrong_type", "", "null"],
    ["IB", "wrong_type", "", ""],
    [{ dept_m: 5 }, "unknown_field", "/dept_m", "dept_m"],
    [{ "a/b~c": 5 }, "unknown_field", "/a~1b~0c", "a/b~c"],
    [JSON.parse('{"__proto__": 5}'), "unknown_field", "/__proto__", "__proto__"],
    [{ constructor: 5 }, "unknown_field", "/constructor", "constructor"],
    [{ depth_m: "5" }, "wrong_type", "/depth_m", ""],
    [{ depth_m: null }, "wrong_type", "/depth_m", "null"],
    [{ depth_m: Number.NaN }, "wrong_type", "/depth_m", ""],
    [{ depth_m: JSON.parse("1e400") }, "wrong_type", "/depth_m", ""],
    [{ depth_m: 0 }, "out_of_range", "/depth_m", "0 m"],
    [{ depth_m: 100.1 }, "out_of_range", "/depth_m", "100.1 m"],
    [{ cloud_oktas: 1.5 }, "not_whole", "/cloud_oktas", "1.5"],
    [{ water_type: "1B" }, "not_an_option", "/water_type", ""],
    [{ kd_samples: [] }, "wrong_length", "/kd_samples", "0"],
    [{ lamps: [{ flux_lm: 1 }] }, "missing_field", "/lamps/0/distance_m", "distance_m"],
    [{ lamps: [{ flux_lm: 1, distance_m: true }] }, "wrong_type", "/lamps/0/distance_m", ""],
    [{ time: "2026-03-10 10:15" }, "wrong_form", "/time", ""],
    [{ local_time: "2026-13-10T10:15" }, "wrong_form", "/local_time", ""],
    [{ expect_model_version: "" }, "wrong_length", "/expect_model_version", "0"],
  ])("%j: %s", (raw, code, pointer, told) => {
    const errors = errorsOf("Scene", raw);
    expect(errors).toEqual([expect.objectContaining({ code, pointer })]);
    expect(errors[0]?.message).toMatch(/^\S.+\.$/);
    expect(errors[0]?.message).toContain(told);
    expect(accepts(sceneSchema)(raw)).toBe(false);
  });

  // Which kind of value was found is a part of the message.
  it("tells values of different types apart", () => {
    const found = [[], "IB", 5, true].map((raw) => errorsOf("Scene", raw)[0]?.message);
    expect(new Set(found)).toHaveLength(4);
  });

  it("names the allowed range with its unit, and the nearest right name", () => {
    expect(errorsOf("Scene", { depth_m: 101, filter_kind: "rad", cloud_oktas: 9 })).toEqual([
      expect.objectContaining({ allowed: "0.1 to 100 m" }),
      expect.objectContaining({ allowed: "one of: red, magenta, blue, green, neutral", did_you_mean: "red" }),
      expect.objectContaining({ allowed: "a whole number, 0 to 8 okta" }),
    ]);
  });

  // RFC 3339, section 5.8: its examples of date and time, but for those with a leap second, which no clock of a program shows.
  it.each([
    ["1985-04-12T23:20:50.52Z", true],
    ["1996-12-19T16:39:57-08:00", true],
    ["1937-01-01T12:00:27.87+00:20", true],
    ["1990-12-31T23:59:60Z", false],
    ["1996-12-19", false],
    ["1996-12-19T16:39:57", false],
    ["1996-12-19T16:39-08:00", false],
  ])("takes the instant %s: %s", (time, passes) => {
    expect(errorsOf("Scene", { time }).length === 0).toBe(passes);
  });

  it("takes an undefined field as left out", () => {
    expect(errorsOf("Scene", { depth_m: undefined })).toEqual([]);
    expect(accepts(sceneSchema)({ depth_m: undefined })).toBe(true);
  });
});

describe("compile", () => {
  it("refuses a schema that it would not check in full", () => {
    expect(() => compile({})).toThrow("Nothing checks {}.");
    expect(() => compile({ type: "array" })).toThrow("Nothing checks {}.");
    expect(() => accepts({ type: "array" })).toThrow("Nothing checks {}.");
    expect(() => compile({ type: "string", const: "a" })).toThrow("Nothing checks");
    expect(() => compile({ $ref: "Scene#" })).toThrow("Nothing checks");
    expect(() => compileReferring({ $ref: "Nothing#" })).toThrow();
  });
});
