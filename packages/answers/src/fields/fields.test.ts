import { filterChoiceAnswerForm, maxErrors } from "@sunfathom/contract";
import { describe, expect, it } from "vitest";
import { answer } from "../operations/in-english.test-support.js";
import { toJson } from "../shape/to-json.js";
import { pick } from "./pick.js";
import { selectionOf } from "./selection.js";

const { form } = filterChoiceAnswerForm;

describe("a selection of fields", () => {
  it("has each name where it is in the answer, and what is always there", () => {
    expect(
      selectionOf(["filter_kind", "depths.depth_m", "depths.best_filter_kind"], form, ["cautions"]),
    ).toEqual({
      selection: { filter_kind: true, depths: { depth_m: true, best_filter_kind: true }, cautions: true },
    });
  });

  it.each([[["depths", "depths.depth_m"]], [["depths.depth_m", "depths"]]])(
    "of a whole field and a part of it has the whole: %j",
    (names) => {
      expect(selectionOf(names, form, [])).toEqual({ selection: { depths: true } });
    },
  );

  it.each([
    ["filter_knd", "filter_kind"],
    ["depths.dept_m", "depths.depth_m"],
    ["filterKind", "filter_kind"],
    ["filter_kind.likely", undefined],
    ["reasons.parameters.mu0", undefined],
    ["", undefined],
    ["depths.", undefined],
    ["constructor", undefined],
    ["__proto__", undefined],
  ])("refuses %j, and has %j for it", (name, near) => {
    expect(selectionOf([name], form, [])).toEqual({ unknown: [{ name, near }] });
  });
});

it("finds what was meant of as many names as a problem lists, and of no more", () => {
  const names = Array.from({ length: 1300 }, (_, n) => `a${n.toString(36)}`);
  expect(selectionOf(names, form, [])).toMatchObject({ unknown: { length: maxErrors } });
});

describe("what is picked", () => {
  const answered = answer("filter-choice", { water_type: "IB", min_depth_m: 5, max_depth_m: 18 });
  if (answered.status !== "ok") throw new Error("no answer");
  const whole = JSON.parse(toJson(answered.body));

  /** Every dotted name that a value has, in its order. */
  function namesIn(value: unknown, before = ""): string[] {
    if (Array.isArray(value)) return [...new Set(value.flatMap((item) => namesIn(item, before)))];
    if (typeof value !== "object" || value === null) return [];
    return Object.entries(value).flatMap(([name, inner]) => {
      const own = `${before}${name}`;
      return name === "parameters" ? [own] : [own, ...namesIn(inner, `${own}.`)];
    });
  }
  const names = namesIn(whole);

  it("by every name that an answer has is what the answer has there, and nothing else", () => {
    expect(names.length).toBeGreaterThan(60);
    for (const name of names) {
      const found = selectionOf([name], form, []);
      if (!("selection" in found)) throw new Error(name);
      const picked = pick(whole, found.selection);
      const parts = name.split(".");
      const along = parts.map((_, index) => parts.slice(0, index + 1).join("."));
      const own = namesIn(picked);
      expect(own.filter((one) => !one.startsWith(`${name}.`)).sort()).toEqual(along.sort());
      const at = (value: unknown, [first, ...rest]: string[]): unknown => {
        if (first === undefined) return value;
        if (Array.isArray(value)) return value.map((item) => at(item, [first, ...rest]));
        return at((value as Record<string, unknown>)[first], rest);
      };
      expect(at(picked, parts)).toEqual(at(whole, parts));
    }
  });

  it("by all names is the whole answer, in its order", () => {
    const found = selectionOf(Object.keys(whole).reverse(), form, []);
    if (!("selection" in found)) throw new Error("unknown");
    expect(JSON.stringify(pick(whole, found.selection))).toBe(JSON.stringify(whole));
  });
});
