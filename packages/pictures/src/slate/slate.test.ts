import {
  BRIGHT_REEF,
  DARK_AND_GREEN,
  daylightScene,
  HARBOUR_WALL_AFTERNOON,
  NIGHT_WRECK,
  OUTER_REEF_MORNING,
  REEF_IN_THE_SHALLOWS,
  REEF_WITH_LAMPS,
  TWO_LAMPS,
} from "@sunfathom/fixtures/scenes";
import { CAUTIONS_OF, type CautionCode, diveAdvice, mountedAdvice, type Scene } from "@sunfathom/planner";
import { pictures as de } from "@sunfathom/words/de";
import { pictures as en } from "@sunfathom/words/en";
import { pictures as es } from "@sunfathom/words/es";
import { pictures as fr } from "@sunfathom/words/fr";
import { describe, expect, it } from "vitest";
import { mmOf, type Sheet, type SheetText } from "../sheet/sheet.js";
import { sheetSvg } from "../sheet/sheet-svg.js";
import { widthOf } from "../text/measure.js";
import { drawSlate, slateOf } from "./slate.js";

const scenes: Readonly<Record<string, Scene>> = {
  BRIGHT_REEF,
  DARK_AND_GREEN,
  HARBOUR_WALL_AFTERNOON,
  NIGHT_WRECK,
  OUTER_REEF_MORNING,
  REEF_IN_THE_SHALLOWS,
  REEF_WITH_LAMPS,
  WRECK: { ...NIGHT_WRECK, overhead: "wreck" },
  LONG: {
    ...daylightScene("5C", 30, 4, 20),
    lamps: [TWO_LAMPS],
    filter_change_underwater: "flip",
    subject_distance_m: 2,
  },
  AUTOMATIC: { ...OUTER_REEF_MORNING, exposure_mode: "auto", white_balance_mode: "auto" },
  KELVIN: { ...OUTER_REEF_MORNING, white_balance_mode: "kelvin", white_balance_kelvin_K: 5600 },
};
const languages = { en, de, es, fr };
/** Each worked out once, for all languages. */
const planned = Object.entries(scenes).map(([name, scene]) => [name, scene, diveAdvice(scene)] as const);

const textsOf = ({ marks }: Sheet): SheetText[] => marks.filter((mark) => mark.kind === "text");
const boxOf = ({ text, x, y, size, weight }: SheetText) => ({
  text,
  left: x,
  right: x + widthOf(text, size, weight),
  top: y - 0.74 * size,
  bottom: y + 0.2 * size,
});
const whole = (sheet: Sheet): string =>
  textsOf(sheet)
    .map(({ text }) => text)
    .join(" ");

describe.each(Object.entries(languages))("a slate in %s", (_, { slate: texts }) => {
  it.each(planned)("of %s keeps its texts apart, and within its margins", (__, scene, answer) => {
    const sheet = drawSlate(answer, scene, texts);
    // ISO 216: A5 is 148 by 210 mm.
    expect([mmOf(sheet.width), mmOf(sheet.height)]).toEqual([expect.closeTo(210, 9), expect.closeTo(148, 9)]);
    const boxes = textsOf(sheet).map(boxOf);
    const margin = sheet.width / 40;
    for (const { text, left, right, top, bottom } of boxes) {
      expect(left, text).toBeGreaterThan(margin);
      expect(right, text).toBeLessThan(sheet.width - margin);
      expect(top, text).toBeGreaterThan(margin);
      expect(bottom, text).toBeLessThan(sheet.height - margin);
    }
    const meeting = boxes.flatMap((one, i) =>
      boxes
        .slice(i + 1)
        .filter(
          (other) =>
            one.left < other.right &&
            other.left < one.right &&
            one.top < other.bottom &&
            other.top < one.bottom,
        )
        .map(({ text }) => [one.text, text]),
    );
    expect(meeting).toEqual([]);
  });

  it.each(planned)("of %s has letters of 14 pt and more, in black and one colour", (__, scene, answer) => {
    const sheet = drawSlate(answer, scene, texts);
    expect(Math.min(...textsOf(sheet).map(({ size }) => size))).toBeGreaterThanOrEqual(14);
    const colours = sheet.marks.flatMap((mark) =>
      mark.kind === "text" ? [mark.fill] : mark.pen ? [mark.pen.stroke] : [],
    );
    expect(new Set(colours).size).toBe(2);
    expect(colours).toContain("#000000");
  });

  it.each(planned)(
    "of %s has every caution whole, the ascent first, and what ends the lamps",
    (__, scene, answer) => {
      const said = whole(drawSlate(answer, scene, texts));
      const places = answer.cautions.map(({ code }) => said.indexOf(texts.cautions[code]));
      expect(places.every((place) => place > 0)).toBe(true);
      const first = answer.cautions.findIndex(({ code }) => code === "ascent_first");
      if (first >= 0) expect(Math.min(...places)).toBe(places[first]);
      if (answer.steps.some(({ code }) => code === "lamps_off_before_air"))
        expect(said).toContain(texts.steps.lamps_off_before_air({}));
    },
  );

  it.each(planned)("of %s tells every line of the plan, or how many it has not", (__, scene, answer) => {
    const said = whole(drawSlate(answer, scene, texts));
    const lines = answer.steps.map(({ code, parameters }) =>
      (texts.steps[code] as (given: unknown) => string)(parameters).slice(1),
    );
    // Each place in the text stands for one line: a short one may be a part of another.
    let unread = said;
    const isLeft = (line: string): boolean => {
      const at = unread.indexOf(line);
      if (at >= 0) unread = unread.slice(0, at) + unread.slice(at + line.length);
      return at < 0;
    };
    const left = [...lines].sort((a, b) => b.length - a.length).filter(isLeft).length;
    const isTaken = unread.includes(texts.taken({ items: ["-"] }).split("-")[0] ?? "-");
    const count = left + (isTaken ? 0 : 1);
    if (count > 0) expect(said).toContain(texts.more({ count }));
    else expect(left).toBe(0);
  });

  it("has room for all cautions at a time", () => {
    const all: CautionCode[] = [
      "not_a_dive_planner",
      "overhead_by_training",
      ...Object.values(CAUTIONS_OF).flat(),
    ];
    const answer = {
      ...diveAdvice(scenes["LONG"] as Scene),
      cautions: all.map((code) => ({ code, parameters: {} })),
    };
    const ofMounts = ["mount_makers_instructions", "mount_sensor_dust", "mount_flat_port_edges"];
    expect(Object.keys(texts.cautions).sort()).toEqual([...all, ...ofMounts].sort());
    const said = whole(drawSlate(answer as never, OUTER_REEF_MORNING, texts));
    for (const code of all) expect(said).toContain(texts.cautions[code]);
    // What is done under water stays, too.
    expect(said).toContain(texts.parts.start);
    expect(said).toContain(texts.parts.down);
  });
});

it("takes the largest letters in which the whole plan fits", () => {
  const sizeOf = (scene: Scene) => Math.min(...textsOf(slateOf(scene, en.slate)).map(({ size }) => size));
  expect(sizeOf(REEF_IN_THE_SHALLOWS)).toBeGreaterThan(sizeOf(scenes["LONG"] as Scene));
});

it("lets no name of a filter become markup, or leave the sheet", () => {
  const id = `<script>&"${"M".repeat(54)}`;
  const kit = [{ id, item: "lens_filter", filter_kind: "red", filter_density: 1.3 }] as const;
  const sheet = slateOf({ ...OUTER_REEF_MORNING, kit: [...kit] }, en.slate);
  expect(sheetSvg(sheet)).not.toContain("<script");
  for (const { right, text } of textsOf(sheet).map(boxOf)) expect(right, text).toBeLessThan(sheet.width);
});

/** What the contract fills in of a mount where a scene says little. */
const DEFAULTS = {
  filter_thickness_mm: 5,
  filter_material: "glass",
  rear_fixing: "slot",
  sheet_thickness_mm: 0.1,
  sheet_refractive_index: 1.5,
  sensor_diagonal_mm: 43.3,
  rings: [],
} as const;
it.each<[string, Scene, string]>([
  [
    "mounts what a plan can mount",
    {
      ...OUTER_REEF_MORNING,
      ...DEFAULTS,
      rings: [],
      port_kind: "flat",
      lens_kind: "standard",
      focal_length_mm: 28,
      sensor_diagonal_mm: 28.4,
      lens_thread_mm: 52,
      port_thread_mm: 67,
      port_outer_diameter_mm: 84,
      filter_thread_mm: 67,
    },
    "fit_filter",
  ],
  [
    "says that nothing fits a fisheye behind a dome",
    {
      ...OUTER_REEF_MORNING,
      ...DEFAULTS,
      rings: [],
      port_kind: "dome",
      dome_radius_mm: 100,
      lens_kind: "fisheye",
      field_of_view_deg: 180,
      lens_interchangeable: false,
    },
    "no_filter_fits",
  ],
])("%s", (_, scene, code) => {
  const plan = mountedAdvice(scene, diveAdvice);
  const step = plan.steps.find((one) => one.code === code);
  if (step === undefined) throw new Error(`no step ${code}`);
  const said = whole(slateOf(scene, en.slate));
  expect(said).toContain((en.slate.steps[step.code] as (given: unknown) => string)(step.parameters));
  for (const caution of plan.cautions) expect(said).toContain(en.slate.cautions[caution.code]);
});
