import { expect, it } from "vitest";
import { caution, cautionsWith, figuresOf, reasonsWith } from "./say.js";

// Programs read the figures; a text is for people.
it("a reason has its code, its text, what it rests on, and its numbers as figures by their names", () => {
  const reason = reasonsWith({
    deep: (p: { depth_m: number; name: string }) => `${p.name} at ${p.depth_m} m`,
    plain: () => "As it is.",
  });
  expect(reason("deep", "computed", { depth_m: 5, name: "A reef" })).toEqual({
    code: "deep",
    text: "A reef at 5 m",
    basis: "computed",
    figures: [{ name: "depth_m", value: 5 }],
  });
  expect(reason("plain", "common_practice")).toEqual({
    code: "plain",
    text: "As it is.",
    basis: "common_practice",
    figures: [],
  });
});

it("figures are numbers alone, 0 among them", () => {
  expect(figuresOf({ a: 0, b: "1", c: true, d: [2], e: undefined, f: -3.5 })).toEqual([
    { name: "a", value: 0 },
    { name: "f", value: -3.5 },
  ]);
  expect(figuresOf(undefined)).toEqual([]);
});

it("a caution has its code and its text", () => {
  expect(cautionsWith({ hot: "It is hot." })("hot")).toEqual({ code: "hot", text: "It is hot." });
  expect(caution("not_a_dive_planner").text).toContain("not a dive plan");
});
