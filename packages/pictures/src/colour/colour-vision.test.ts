// What a picture tells by colour is told to those who see fewer colours, too: by a colour that stays apart, or by dash, letter or number.
// Protanopia, deuteranopia and tritanopia as Machado, Oliveira & Fernandes 2009 simulate them (A physiologically-based model for
// simulation of color vision deficiency, IEEE Trans. Vis. Comput. Graph. 15, 1291), by culori's implementation; differences are CIEDE2000.
import { NIGHT_WRECK, OUTER_REEF_MORNING } from "@sunfathom/fixtures/scenes";
import { pictures as words } from "@sunfathom/words/en";
import {
  differenceCiede2000,
  filterDeficiencyDeuter,
  filterDeficiencyProt,
  filterDeficiencyTrit,
  lab,
  parse,
} from "culori";
import { XMLParser } from "fast-xml-parser";
import { describe, expect, it } from "vitest";
import { pictures } from "../index.js";
import { COLOURS, themes } from "../theme.js";
import { errorColour } from "./ramp.js";
import { hexOf } from "./srgb.js";

/** Apart at a glance, side by side or not: ten times what is just seen. A judgement. */
const APART_DELTA_E00 = 10;

const scenes = { OUTER_REEF_MORNING, NIGHT_WRECK };
type Theme = (typeof themes)[number];

/** Every picture of both scenes, worked out once and drawn in each theme. */
const drawn = new Map<string, Record<Theme, string>[]>(
  pictures.map(({ name, drawing }) => [
    name,
    Object.values(scenes).map((scene) => {
      const draw = drawing(scene);
      const inTheme = (theme: Theme) => draw({ width_px: 800, theme }, words);
      return { light: inTheme("light"), dark: inTheme("dark"), print: inTheme("print") };
    }),
  ]),
);
const drawnOf = (name: string, theme: Theme): string[] => (drawn.get(name) ?? []).map((one) => one[theme]);

const eyes = {
  protanopia: filterDeficiencyProt(1),
  deuteranopia: filterDeficiencyDeuter(1),
  tritanopia: filterDeficiencyTrit(1),
};
const difference = differenceCiede2000();
type Eye = (colour: string) => NonNullable<ReturnType<typeof parse>>;

function seenBy(eye: keyof typeof eyes): Eye {
  return (colour) => {
    const read = parse(colour);
    if (read === undefined) throw new Error(`${colour} is no colour`);
    return eyes[eye](read);
  };
}

interface Line {
  stroke: string;
  dash: string;
}

interface Node {
  ":@"?: Record<string, string>;
  [name: string]: unknown;
}
const parser = new XMLParser({ preserveOrder: true, ignoreAttributes: false, attributeNamePrefix: "" });

/** The lines of a picture by colour and dash, attributes of groups included. */
function linesOf(svg: string): Line[] {
  const lines: Line[] = [];
  const walk = (nodes: Node[], inherited: Record<string, string>): void => {
    for (const node of nodes) {
      const attributes = { ...inherited, ...node[":@"] };
      const [name = ""] = Object.keys(node).filter((key) => key !== ":@");
      const { stroke, "stroke-dasharray": dash = "" } = attributes;
      if ((name === "path" || name === "line") && stroke !== undefined) lines.push({ stroke, dash });
      const children = node[name];
      if (Array.isArray(children)) walk(children as Node[], attributes);
    }
  };
  walk(parser.parse(svg) as Node[], {});
  return lines;
}

describe.each(Object.keys(eyes) as (keyof typeof eyes)[])("with %s", (deficiency) => {
  const seen = seenBy(deficiency);
  const apart = (one: string, other: string): number => difference(seen(one), seen(other));

  describe.each(themes)("in the theme %s", (theme) => {
    const { ground, text, quiet, accent, lights } = COLOURS[theme];

    it("texts, lines and marks stand out from the ground", () => {
      for (const colour of [text, quiet, accent, ...Object.values(lights)])
        expect(apart(colour, ground), colour).toBeGreaterThan(4 * APART_DELTA_E00);
    });

    it.each([...drawn.keys()])("lines of %s are told apart by colour or by their dash", (name) => {
      const meaning = Object.values(lights);
      for (const svg of drawnOf(name, theme)) {
        const lines = linesOf(svg).filter(({ stroke }) => meaning.includes(stroke));
        const alike = lines.flatMap((one, i) =>
          lines
            .slice(i + 1)
            .filter(
              (other) =>
                other.stroke !== one.stroke &&
                other.dash === one.dash &&
                apart(one.stroke, other.stroke) < APART_DELTA_E00,
            )
            .map((other) => `${one.stroke} / ${other.stroke}`),
        );
        expect([...new Set(alike)]).toEqual([]);
      }
    });

    it("a field of a larger error is always the darker one, and four units on it is seen to be", () => {
      const steps = [0, 4, 8, 12, 16, 20, 24].map((error) => seen(hexOf(errorColour(error, theme))));
      for (const [i, step] of steps.slice(1).entries()) {
        const before = steps[i] ?? step;
        expect(lab(step)?.l).toBeLessThan(lab(before)?.l ?? 0);
        expect(difference(step, before)).toBeGreaterThan(APART_DELTA_E00 / 2);
      }
    });
  });
});

// In print and with fewer colours tints of a fifth may look alike: whoever sees none of them reads the letter.
it.each(themes)(
  "every field of mixed light has a letter of its own, in the map and in its key: %s",
  (theme) => {
    const { accent, lights } = COLOURS[theme];
    const letters = { [accent]: "A", [lights.red]: "B", [lights.blue]: "C" };
    const shown = drawnOf("mixed-light-map", theme).map((svg) => {
      const field = svg.match(/<g shape-rendering="crispEdges" fill-opacity.*?<\/g>/s)?.[0] ?? "";
      const fills = new Set([...field.matchAll(/fill="(#\w+)"/g)].map(([, fill = ""]) => fill));
      const said = [...svg.matchAll(/<circle[^>]*\/><text[^>]*>(\w)</g)].map(([, letter]) => letter);
      for (const fill of fills) {
        const letter = letters[fill];
        expect(letter, fill).toBeDefined();
        expect(said.filter((one) => one === letter).length, `${letter}`).toBeGreaterThanOrEqual(2);
      }
      return fills.size;
    });
    expect(Math.max(...shown)).toBeGreaterThanOrEqual(2);
  },
);

it("every field of errors carries its number", () => {
  const [map = ""] = drawnOf("filter-map", "light");
  const fields = map.match(/shape-rendering="crispEdges".*?<\/g>/s)?.[0] ?? "";
  const [rects, numbers] = [fields.match(/<rect/g) ?? [], fields.match(/<text/g) ?? []];
  expect(rects.length).toBeGreaterThan(20);
  expect(numbers.length).toBe(rects.length);
});
