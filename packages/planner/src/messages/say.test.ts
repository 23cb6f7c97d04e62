import { expect, it } from "vitest";
import { figuresOf, reasonsWith } from "./say.js";

// Programs read the figures; a text is for people.
it("a reason has its code, its text, and what it rests on", () => {
  const reason = reasonsWith({
    deep: (p: { depth_m: number; name: string }) => `${p.name} at ${p.depth_m} m`,
    plain: () => "As it is.",
  });
  expect(reason("deep", "computed", { depth_m: 5, name: "A reef" })).toEqual({
    code: "deep",
    text: "A reef at 5 m",
    basis: "computed",
    parameters: { depth_m: 5, name: "A reef" },
  });
  expect(reason("plain", "common_practice")).toEqual({
    code: "plain",
    text: "As it is.",
    basis: "common_practice",
    parameters: {},
  });
});

it("figures are numbers alone, 0 among them", () => {
  expect(figuresOf({ a: 0, b: "1", c: true, d: [2], e: undefined, f: -3.5 })).toEqual([
    { name: "a", value: 0 },
    { name: "f", value: -3.5 },
  ]);
  expect(figuresOf(undefined)).toEqual([]);
});
