import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { withinBytes } from "./within-bytes.js";

const bytes = (value: object): number => Buffer.byteLength(JSON.stringify(value));
const said = {
  caution: "This is advice on light and colour, not a dive plan.",
  caution_codes: ["not_a_dive_planner", "ascent_first"],
  model_version: "2026.11.20",
};
const answer = { filter_kind: "red", filter_id: "x".repeat(64), balance_depths_descending_m: [5, 9] };

describe("a brief answer", () => {
  it("stays as it is where it is short", () => {
    const short = { headline: "Mount a red filter. Expose with ISO 100.", answer, ...said };
    expect(withinBytes(short)).toEqual(short);
  });

  it("loses the headline's last sentences first", () => {
    const headline = ["Mount a red filter.", "a ".repeat(150), "b ".repeat(150)].join(" ");
    const sentences = `Mount a red filter. ${"a".repeat(200)}. ${"b".repeat(200)}.`;
    expect(withinBytes({ headline: sentences, answer, ...said })).toEqual({
      headline: `Mount a red filter. ${"a".repeat(200)}. …`,
      answer,
      ...said,
    });
    expect(withinBytes({ headline, answer, ...said }).headline).toMatch(/^Mount a red filter\. …$/);
  });

  it("loses its longest field next, and words of its only sentence last", () => {
    const id = "🐠".repeat(64);
    const brief = withinBytes({
      headline: `Mount ${id} now.`,
      answer: { ...answer, filter_id: id },
      ...said,
    });
    const { filter_id: _, ...rest } = answer;
    expect(brief).toEqual({ headline: `Mount ${id} now.`, answer: rest, ...said });
    const long = withinBytes({ headline: `Mount this here: ${"🐠".repeat(200)}`, answer, ...said });
    expect(long).toEqual({ headline: "Mount this here: …", answer: {}, ...said });
  });

  it("is below 700 bytes whatever is in it, keeps its cautions, and says where it was cut", () => {
    const id = fc.string({ unit: "binary", minLength: 1, maxLength: 64 });
    const answers = fc.record(
      { filter_id: id, ids: fc.array(id, { maxLength: 32 }), iso: fc.double({ noNaN: true }) },
      { requiredKeys: [] },
    );
    const codes = fc.array(fc.string({ unit: "grapheme-ascii", minLength: 1, maxLength: 22 }), {
      maxLength: 13,
    });
    fc.assert(
      fc.property(fc.string({ unit: "binary", maxLength: 900 }), answers, codes, (headline, some, all) => {
        const rest = { ...said, caution_codes: ["not_a_dive_planner", ...all] };
        fc.pre(bytes({ ...rest, headline: "…", answer: {} }) < 690);
        const brief = withinBytes({ headline, answer: some, ...rest });
        expect(bytes(brief)).toBeLessThan(700);
        expect(brief).toMatchObject(rest);
        if (brief.headline !== headline) expect(brief.headline).toMatch(/…$/);
        expect(some).toMatchObject(brief.answer);
      }),
    );
  });
});
