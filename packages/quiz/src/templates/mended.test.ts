// What a reading of many questions found wrong, dull or unknowable, one by one. Keys are held to another route in
// `paper/items-for.test.ts`; here, that readers can come to them.
import { describe, expect, it } from "vitest";
import type { Item, Level } from "../item/item.js";
import { itemsFor } from "../paper/items-for.js";
import { TEMPLATES } from "./table.js";

const DRAWS = 40;

const known = new Map<string, readonly Item[]>();

/** The same questions for every test that asks for them. */
function drawn(template: string, level: Level): readonly Item[] {
  const key = `${template} ${level}`;
  const items =
    known.get(key) ??
    Array.from({ length: DRAWS }, (_, i) =>
      itemsFor({
        seed: `mended ${i}`,
        level,
        count: 1,
        templates: [template],
        units: "metric",
        language: "en",
      }),
    ).flat();
  known.set(key, items);
  return items;
}
const values = (items: readonly Item[]): string[] =>
  items.flatMap((item) =>
    "options" in item ? item.options.filter(({ right }) => right).map(({ value }) => String(value)) : [],
  );
const numbersIn = (text: string): number[] => (text.match(/[-+]?\d+(?:\.\d+)?/g) ?? []).map(Number);

describe("video lights against daylight", () => {
  it("lead only where the readings say so, and fight only where they are near each other", () => {
    for (const item of drawn("mixed_verdict", "working")) {
      const [daylight = 0, lamp = 0] = numbersIn(item.stem.split("a meter reads ")[1] ?? "");
      const [key] = values([item]);
      const ratio = lamp / daylight;
      // Two readings with two digits each: 3 stops are a factor of 8, 2 stops one of 4.
      if (key === "lamps_lead") expect(ratio).toBeGreaterThan(7);
      else if (key === "daylight_leads") expect(ratio).toBeLessThan(1 / 7);
      else expect(Math.abs(Math.log2(ratio))).toBeLessThan(2.2);
    }
  });

  it("are told experts channel by channel", () => {
    for (const item of drawn("mixed_verdict", "expert")) {
      const stops = (item.stem.split("they give ")[1] ?? "").split(" against")[0] ?? "";
      const [key] = values([item]);
      const each = numbersIn(stops);
      expect(each).toHaveLength(3);
      if (key === "lamps_lead") expect(Math.min(...each)).toBeGreaterThanOrEqual(3);
      else if (key === "daylight_leads") expect(Math.max(...each)).toBeLessThanOrEqual(-3);
      else expect(Math.max(...each.map(Math.abs))).toBeLessThanOrEqual(2);
    }
  });
});

// The dial of a camera in thirds of a stop: common practice, no published source.
const DIAL = [100, 125, 160, 200, 250, 320, 400, 500, 640, 800, 1000, 1250, 1600, 2000, 2500, 3200];
const HIGHER = [4000, 5000, 6400, 8000, 10000, 12800];

it("an ISO is one that cameras have, with its neighbour where the exact one lies between", () => {
  const items = [...drawn("pay_with_iso", "working"), ...drawn("pay_with_iso", "expert")];
  for (const item of items) {
    if (item.interaction !== "numeric") throw new Error("no number");
    const { accepted, value, given } = item;
    const dial = [...DIAL, ...HIGHER];
    const right = dial.filter((iso) => iso >= accepted.low && iso <= accepted.high);
    expect(dial).toContain(value);
    expect(right).toContain(value);
    expect(right.length).toBeLessThanOrEqual(2);
    const exact =
      Number(given["iso"]) *
      ("density" in given ? 10 ** Number(given["density"]) : 2 ** Number(given["stops"]));
    for (const iso of right) expect(Math.abs(Math.log2(iso / exact))).toBeLessThan(0.34);
    if (right.length === 2) expect(right[0]! < exact === right[1]! < exact).toBe(false);
  }
  const both = items.filter(({ given }) => given["iso"] === 400 && given["stops"] === 0.5);
  for (const item of both)
    expect(item.interaction === "numeric" && [500, 640].includes(item.value)).toBe(true);
});

it("factors of densities double as their solution says", () => {
  for (const level of ["beginner", "working", "expert"] as const) {
    for (const item of drawn("density_match", level)) {
      if (item.interaction !== "matching") throw new Error("no matching");
      for (const pair of item.pairs) {
        const density = numbersIn(item.left.find(({ id }) => id === pair.left)!.text)[0]!;
        const said = numbersIn(item.right.find(({ id }) => id === pair.right)!.text);
        const halvings = Math.round(density / 0.3);
        const wanted = { beginner: halvings, working: 2 ** halvings, expert: 2 ** halvings }[level];
        expect(level === "expert" ? said[1] : said[0]).toBe(wanted);
      }
    }
  }
});

it("balancing again asks for the way down and up in daylight more often than not", () => {
  for (const level of ["beginner", "working", "expert"] as const) {
    const asked = drawn("when_to_balance", level).filter(
      (item) => "options" in item && item.options.some(({ value }) => /^(de|a)scend/.test(String(value))),
    );
    expect(asked.length).toBeGreaterThan(DRAWS / 2);
  }
});

it.each([
  ["kelvin_meaning", "working"],
  ["lamp_only_balance", "beginner"],
  ["red_in_post", "working"],
  ["red_in_post", "expert"],
  ["mixed_verdict", "working"],
  ["mount_place", "beginner"],
  ["filter_for_water", "beginner"],
  ["kelvin_meaning", "expert"],
  ["lamp_only_balance", "working"],
  ["way_out", "working"],
  ["water_from_spectrum", "working"],
] as const)("%s at level %s keys no option more than three times in four", (template, level) => {
  const keys = values(drawn(template, level));
  const most = Math.max(...[...new Set(keys)].map((key) => keys.filter((k) => k === key).length));
  expect(most / keys.length).toBeLessThan(0.75);
});

it("what grading can do has no option that is never right", () => {
  for (const level of ["beginner", "working", "expert"] as const) {
    const items = drawn("red_in_post", level);
    const offered = new Set(
      items.flatMap((item) => ("options" in item ? item.options.map(({ value }) => String(value)) : [])),
    );
    expect(new Set(values(items))).toEqual(offered);
  }
});

it("a curve fills its axis: it reaches above half of it", () => {
  const items = [...drawn("spectrum_most_left", "beginner"), ...drawn("water_from_spectrum", "working")];
  for (const item of items) {
    const path = /<path d="([^"]+)"/.exec(item.picture!.svg)![1]!;
    // The axis goes from 232 (nothing) up to 16 (its end).
    const heights = numbersIn(path).filter((_, i) => i % 2 === 1);
    expect(Math.min(...heights)).toBeLessThan((232 + 16) / 2);
  }
});

describe("what is left of red", () => {
  it("can be worked out from the table of the question", () => {
    for (const level of ["working", "expert"] as const) {
      for (const item of drawn("red_left", level)) {
        if (!("options" in item)) throw new Error("no choice");
        const rows = [...item.stem.matchAll(/(\d+) m: red ([\d.]+)/g)].map(([, m, stops]) => [
          Number(m),
          Number(stops),
        ]);
        expect(rows).toHaveLength(4);
        const depth = Number(/is left at (\d+) m/.exec(item.stem)![1]);
        const upper = rows.filter(([m]) => m! <= depth).at(-1)!;
        const lower = rows.find(([m]) => m! >= depth)!;
        const percent = 100 * 0.5 ** ((upper[1]! + lower[1]!) / 2);
        const nearest = item.options.reduce((best, option) =>
          Math.abs(Math.log(Number(option.value) / percent)) <
          Math.abs(Math.log(Number(best.value) / percent))
            ? option
            : best,
        );
        expect(nearest.right, item.stem).toBe(true);
      }
    }
  });

  it("can be read off the picture of its curves", () => {
    for (const item of [...drawn("red_reach", "beginner"), ...drawn("red_reach", "working")]) {
      const { svg } = item.picture!;
      const asked = /has orange and red light \(600 to 700 nm\) lost (\d) stops/.exec(item.stem);
      const share = asked === null ? 0.1 : 0.5 ** Number(asked[1]);
      // Percent by height, metres by width: the ends of the axes in the chart.
      const ticks = [...svg.matchAll(/text-anchor="middle">([\d.]+)</g)].map(([, m]) => Number(m));
      const path = /<path d="M([^"]+)"/
        .exec(svg)![1]!
        .split("L")
        .map((point) => point.split(",").map(Number));
      const at = path.find(([, y]) => y! >= 232 - share * (232 - 16))!;
      const depth = ((at[0]! - 56) / (464 - 56)) * Math.max(...ticks);
      const right = values([item]).map(Number)[0]!;
      expect(Math.abs(depth / right - 1)).toBeLessThan(0.08);
    }
  });
});

it("beginners are asked for densities of filters that divers carry, at most four stops", () => {
  for (const item of drawn("density_to_stops", "beginner")) {
    expect(item.interaction === "numeric" && item.value).toBeLessThanOrEqual(4);
  }
});

/** How many things a question has decided. */
const decisions = (item: Item): number =>
  "options" in item
    ? item.options.length
    : "entries" in item
      ? item.entries.length
      : "left" in item
        ? item.left.length
        : 1;

it.each(TEMPLATES.filter(({ levels }) => levels.length > 1).map(({ id, levels }) => [id, levels] as const))(
  "%s asks for something else at its highest level than at the one below, for more, or for another mistake",
  (template, levels) => {
    const wording = (items: readonly Item[]) =>
      new Set(items.map(({ stem }) => stem.replace(/[-+]?\d+(\.\d+)?/g, "#")));
    const most = (items: readonly Item[]): number => Math.max(...items.map(decisions));
    const [highest, below] = [drawn(template, levels.at(-1)!), drawn(template, levels.at(-2)!)];
    const known = wording(below);
    const mistakes = (items: readonly Item[]) =>
      new Set(items.flatMap((item) => ("options" in item ? item.options.map((o) => o.misconception) : [])));
    const met = mistakes(below);
    const newMistake = [...mistakes(highest)].some((mistake) => !met.has(mistake));
    const fresh = [...wording(highest)].filter((stem) => !known.has(stem));
    expect(fresh.length > 0 || most(highest) > most(below) || newMistake).toBe(true);
  },
);

it("steps between colour temperatures are asked for in several ways", () => {
  const asked = drawn("mired_shift", "expert").map(
    ({ stem }) => /which shift|gets a filter/i.exec(stem)?.[0],
  );
  expect(new Set(asked).size).toBe(2);
});

it("sources are told as learners can read them", () => {
  const items = TEMPLATES.flatMap(({ id, levels }) =>
    itemsFor({
      seed: "sources",
      level: levels[0]!,
      count: 1,
      templates: [id],
      units: "metric",
      language: "en",
    }),
  );
  for (const { template, solution } of items)
    for (const source of solution.sources)
      expect(source, template).not.toMatch(/this project|overlap of two|from memory|logistic|fitted to/i);
});
