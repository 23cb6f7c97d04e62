import { expect, it } from "vitest";
import { filterChoiceReasons } from "./filter-choice.js";

it("the best of the filters that none is worth is named, and which way it moves the error", () => {
  const best = { kind: "magenta", density: 0.6, id: "mine" } as const;
  const said = (best_change: number) =>
    filterChoiceReasons.no_filter_earns({ best, best_change, worthwhile: 0.5 });
  for (const change of [-0.321, 0.1]) expect(said(change)).toMatch(/mine .*magenta.*\b0\.6\b/);
  expect(said(-0.321)).not.toBe(said(0.1));
});

it("lamps that are the only light are balanced to, by their temperature where it is known", () => {
  expect(filterChoiceReasons.lamps_are_the_only_light({ lamp: { cct_K: 3200 } })).toContain("3200 K");
  expect(filterChoiceReasons.lamps_are_the_only_light({})).not.toContain(" K");
});

it("a part that would gain is told by its ends, or as the one depth that it is", () => {
  expect(filterChoiceReasons.part_would_gain({ kind: "red", from_m: 3, to_m: 9 })).toMatch(
    /3 to 9 m.*\bred\b/,
  );
  expect(filterChoiceReasons.part_would_gain({ kind: "red", from_m: 3, to_m: 3 })).toMatch(/3 m .*\bred\b/);
});

it("too much light is told with the settings and what would take it away", () => {
  const p = {
    depth_m: 5,
    excess_stops: 1.2,
    density: 0.36,
    iso: 400,
    f_number: 5.6,
    metering: "grey_card",
  } as const;
  expect(filterChoiceReasons.light_is_too_much(p)).toMatch(/5 m.*ISO 400.*f\/5\.6/);
});

it("light that holds the density is told with what would be mounted, and what buys more of it", () => {
  const wanted = { kind: "red", density: 1.5 } as const;
  const said = filterChoiceReasons.light_holds_density({
    wanted,
    depth_m: 20,
    iso: 800,
    f_number: 2.8,
    shutter_s: 1 / 50,
  });
  expect(said).toMatch(/\bred\b.*\b1\.5\b/);
  expect(said).toContain("ISO 800 at f/2.8 and 1/50 s");
});
