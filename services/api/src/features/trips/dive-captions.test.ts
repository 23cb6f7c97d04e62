// Captions as the parser reads them that the W3C keeps beside its standard (webvtt.js).
import { createRequire } from "node:module";
import { diveTimelinesExamples } from "@sunfathom/contract";
import type { FastifyInstance } from "fastify";
import { afterAll, beforeAll, expect, it } from "vitest";
import { buildApp } from "../../build-app.test-support.js";

interface Parsed {
  cues: { id: string; startTime: number; endTime: number; text: string }[];
  errors: { message: string; line: number }[];
}
const { WebVTTParser } = createRequire(import.meta.url)("webvtt-parser");
const parse = (text: string): Parsed => new WebVTTParser().parse(text, "captions");

let app: FastifyInstance;
beforeAll(async () => {
  app = await buildApp();
  await app.ready();
});
afterAll(() => app.close());

const usual = diveTimelinesExamples.wall_with_three_clips.value;
const ask = (payload: object, accept: string) =>
  app.inject({ method: "POST", url: "/v1/dive-timelines", payload, headers: { accept } });
const clockOf = (seconds: number): string => new Date(seconds * 1000).toISOString().slice(11, 19);

it("are WebVTT without an error, with the clips on the camera's clock and their names, whatever these are", async () => {
  const [first, ...others] = usual.clips;
  const odd = { ...usual, clips: [{ ...first, id: "A & B <c> --> 00:00:01.000" }, ...others] };
  const answered = await ask(odd, "text/vtt");
  expect(answered.statusCode, answered.payload).toBe(200);
  expect(answered.headers["content-type"]).toBe("text/vtt; charset=utf-8");
  expect(String(answered.headers["vary"])).toMatch(/\bAccept\b(?!-)/);
  const { cues, errors } = parse(answered.payload);
  expect(errors).toEqual([]);
  const { clips, moments } = (await ask(odd, "application/json")).json();
  expect(cues).toHaveLength(clips.length + moments.length);
  for (const clip of clips) {
    const cue = cues.find(
      ({ startTime, endTime }) => clockOf(startTime) === clip.from_clock && endTime - startTime > 20,
    );
    expect(cue && clockOf(cue.endTime)).toBe(clip.to_clock);
    const [, ev] = /EV (\d+\.\d) at ISO 100/.exec(cue?.text ?? "") ?? [];
    expect(Math.abs(Number(ev) - clip.exposure_value_ev100.likely)).toBeLessThan(0.056);
    expect(cue?.text).toContain(clip.reason.text);
  }
  expect(cues.some(({ id }) => id === "A & B <c> -> 00:00:01.000")).toBe(true);
  expect(answered.payload).toContain("NOTE\n");
});

it("go on past midnight, in the order of time", async () => {
  const late = {
    ...usual,
    start_clock: "23:50:00",
    clock_offset_s: 0,
    clips: [
      { id: "before", from_clock: "23:56:00", length_s: 30 },
      { id: "after", from_clock: "00:10:00", length_s: 30 },
    ],
  };
  const { cues, errors } = parse((await ask(late, "text/vtt")).payload);
  expect(errors).toEqual([]);
  const begins = cues.map(({ startTime }) => startTime);
  expect(begins).toEqual([...begins].sort((a, b) => a - b));
  expect(cues.find(({ id }) => id === "after")?.startTime).toBe(86_400 + 600);
});

it("come to whoever likes them best, JSON to all others, with a tag of its own for each", async () => {
  const type = async (accept: string) => {
    const { headers, statusCode } = await ask(usual, accept);
    return [statusCode, String(headers["content-type"]).split(";")[0], headers["etag"]];
  };
  const [json, vtt] = [await type("*/*"), await type("text/vtt, application/json;q=0.5")];
  expect(json.slice(0, 2)).toEqual([200, "application/json"]);
  expect(vtt.slice(0, 2)).toEqual([200, "text/vtt"]);
  expect(vtt[2]).not.toBe(json[2]);
  expect(await type("application/json, text/vtt;q=0.5")).toEqual(json);
  expect((await type("image/png")).slice(0, 2)).toEqual([406, "application/problem+json"]);
});
