// An answer in brief fits on a label, whatever the scene.
import { brief, operationsIn, selectionOf, toJson } from "@sunfathom/answers";
import { mountingExamples } from "@sunfathom/contract";
import { de } from "@sunfathom/words/de";
import { en } from "@sunfathom/words/en";
import { sceneProblems } from "@sunfathom/words/en/problems";
import { es } from "@sunfathom/words/es";
import { fr } from "@sunfathom/words/fr";
import { describe, expect, it } from "vitest";
import { makeLight, makeMounting } from "./golden/scenes.js";

/** One scene in so many: all of them are computed elsewhere. */
const everyNth = (scenes: object, nth: number): unknown[] =>
  Object.values(scenes).filter((_, index) => index % nth === 0);
const scenesOf = { Scene: everyNth(makeLight(), 8), MountingScene: everyNth(makeMounting(), 3) };

/** What a plan comes down to; what would do nearly as well is no headline. */
const plainSummary = ({
  summary,
  close_calls,
}: {
  summary: string;
  close_calls: { text: string }[];
}): string => close_calls.reduce((text, call) => text.replace(` ${call.text}`, ""), summary);

describe.each(operationsIn(en, sceneProblems))("$path in brief", ({ request, form, brief: names, reply }) => {
  const found = selectionOf(names, form.form, []);
  if (!("selection" in found)) throw new Error("It comes down to fields that it does not have.");

  it("is less than 700 bytes, with a headline, what it comes down to, and its cautions", () => {
    const answers = scenesOf[request].flatMap((scene) => {
      const answered = reply(scene);
      return answered.status === "ok" ? [JSON.parse(toJson(answered.body))] : [];
    });
    expect(answers.length).toBeGreaterThan(5);
    for (const whole of answers) {
      const text = JSON.stringify(brief(whole, found.selection));
      expect(Buffer.byteLength(text), text).toBeLessThan(700);
      const { answer, ...said } = JSON.parse(text);
      expect(said).toEqual({
        headline: whole.summary === undefined ? whole.reasons[0].text : plainSummary(whole),
        caution: whole.cautions[0].text,
        caution_codes: whole.cautions.map(({ code }: { code: string }) => code),
        model_version: whole.model.version,
      });
      expect(Object.keys(answer).length).toBeGreaterThan(0);
      const { depths } = whole;
      const ends = depths?.length > 2 ? { depths: [depths[0], depths.at(-1)] } : {};
      expect({ ...whole, ...ends }).toMatchObject(answer);
    }
  });
});

/** Where everything is long: ids of 64 characters of four bytes, and every caution that there is. */
const id = "🐠".repeat(64);
const lamps = [
  { flux_lm: 4000, count: 2, beam_angle_deg: 100, beam_angle_medium: "water", cct_K: 5600, distance_m: 0.8 },
];
const longest = {
  Scene: {
    visibility_m: 25,
    water_hue: "blue",
    min_depth_m: 5,
    max_depth_m: 30,
    sun_elevation_deg: 50,
    overhead: "wreck",
    kit: [{ id, item: "lens_filter", filter_kind: "red", filter_density: 0.9 }],
    lamps,
  },
  MountingScene: {
    ...mountingExamples.flat_port_and_rings.scene,
    rings: mountingExamples.flat_port_and_rings.scene.rings.map((ring, nth) => ({
      ...ring,
      id: `${nth}${id.slice(2)}`,
    })),
  },
};

/** Every caution that there is, light and mounting, as no scene has them all. */
async function cautionsIn(language: string): Promise<{ code: string; text: string }[]> {
  const { cautions } = await import(`../packages/words/src/${language}/cautions.ts`);
  const { mountingCautions } = await import(`../packages/words/src/${language}/mounting-cautions.ts`);
  const all: Record<string, string> = { ...cautions, ...mountingCautions };
  return Object.entries(all).map(([code, text]) => ({ code, text }));
}

describe.each([
  ["en", en],
  ["de", de],
  ["es", es],
  ["fr", fr],
] as const)("in %s", (language, words) => {
  it("is less than 700 bytes with long ids and all cautions, which it keeps", async () => {
    const all = await cautionsIn(language);
    expect(all.length).toBeGreaterThan(10);
    for (const { request, form, brief: names, reply, path } of operationsIn(words, sceneProblems)) {
      const found = selectionOf(names, form.form, []);
      if (!("selection" in found)) throw new Error("It comes down to fields that it does not have.");
      const answered = reply(longest[request]);
      if (answered.status !== "ok") throw new Error(`${path}: ${JSON.stringify(answered.problem.errors)}`);
      const whole = JSON.parse(toJson(answered.body));
      const text = JSON.stringify(brief(whole, found.selection));
      expect(Buffer.byteLength(text), text).toBeLessThan(700);
      const most = JSON.stringify(brief({ ...whole, cautions: all }, found.selection));
      expect(Buffer.byteLength(most), most).toBeLessThan(700);
      expect(JSON.parse(most)).toMatchObject({
        caution: all[0]?.text,
        caution_codes: all.map(({ code }) => code),
      });
    }
  });
});
