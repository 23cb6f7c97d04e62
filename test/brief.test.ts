// An answer in brief fits on a label, whatever the scene.
import { brief, operationsIn, selectionOf, toJson } from "@sunfathom/answers";
import { en } from "@sunfathom/words/en";
import { sceneProblems } from "@sunfathom/words/en/problems";
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
