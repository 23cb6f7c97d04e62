import { expect, it } from "vitest";
import { timestamp, webVtt } from "./web-vtt.js";

it("times are those of the standard, hours beyond a day, too", () => {
  expect([0, 59.9996, 3725.25, 90_061].map(timestamp)).toEqual([
    "00:00:00.000",
    "00:01:00.000",
    "01:02:05.250",
    "25:01:01.000",
  ]);
});

it("nothing that callers or texts say leaves its line, its cue or its note", () => {
  const text = webVtt({
    title: "a --> b\nWEBVTT",
    notes: ["one\n\n00:00:01.000 --> 00:00:02.000\nnot a cue"],
    cues: [
      { from_s: 9, to_s: 12, lines: ["later"] },
      { id: "x --> y\r\n\r\n", from_s: 1, to_s: 2, lines: ["a & b <v Someone>", "", "p --> q\u2028r"] },
    ],
  });
  expect(text).toBe(
    `${[
      "WEBVTT a -> b WEBVTT",
      "",
      "NOTE",
      "one 00:00:01.000 -> 00:00:02.000 not a cue",
      "",
      "x -> y",
      "00:00:01.000 --> 00:00:02.000",
      "a &amp; b &lt;v Someone&gt;",
      "-",
      "p --&gt; q r",
      "",
      "00:00:09.000 --> 00:00:12.000",
      "later",
    ].join("\n")}\n`,
  );
});
