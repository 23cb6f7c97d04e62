import { attenuationAnswerForm as form } from "@sunfathom/contract";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { answer, operations } from "../operations/in-english.test-support.js";
import { ByteWriter } from "./byte-writer.js";
import { toBytes } from "./bytes.js";
import { round } from "./round.js";
import { toJson } from "./to-json.js";

const utf8 = (text: string): number[] => Array.from(new TextEncoder().encode(text));
const written = (write: (out: ByteWriter) => void): string => {
  const out = new ByteWriter();
  write(out);
  return new TextDecoder().decode(out.take());
};

describe("the bytes of an answer", () => {
  const cases = operations.flatMap(({ name, examples }) => examples.map(({ scene }) => ({ name, scene })));

  it.each(cases)("$name: are those of JSON.stringify", ({ name, scene }) => {
    const answered = answer(name, scene);
    if (answered.status !== "ok") throw new Error("no answer");
    expect(new TextDecoder().decode(toBytes(answered))).toBe(toJson(answered.body));
  });

  it("refuse what the contract does not have, and start afresh after it", () => {
    const message = "AttenuationAnswer/scene must be there";
    expect(() => toBytes({ form, unshaped: {} })).toThrow(message);
    expect(() => toBytes({ form, unshaped: {} })).toThrow(message);
    const [first] = cases;
    if (first === undefined) throw new Error("no case");
    const answered = answer(first.name, first.scene);
    if (answered.status !== "ok") throw new Error("no answer");
    expect(Array.from(toBytes(answered))).toEqual(utf8(toJson(answered.body)));
  });
});

describe("numbers and texts as bytes", () => {
  it("writes what JSON.stringify writes of the rounded number, to every count of decimals", () => {
    const number = fc.oneof(
      fc.double({ min: -1e4, max: 1e4, noNaN: true }),
      fc.double({ noNaN: true, noDefaultInfinity: true }),
      fc.integer({ min: -1_000_000, max: 1_000_000 }).map((n) => n / 1000),
    );
    fc.assert(
      fc.property(number, fc.integer({ min: 0, max: 8 }), (value, decimals) => {
        expect(written((out) => out.rounded(value, decimals))).toBe(JSON.stringify(round(value, decimals)));
      }),
      { seed: 8259, numRuns: 5000 },
    );
  });

  it.each([
    [0, 2],
    [-0, 2],
    [-0.001, 2],
    [1.005, 2],
    [0.0999, 3],
    [9.9999, 3],
    [10, 0],
    [2147483647.5, 1],
    [2147483648.25, 2],
    [999999999999.994, 3],
    [4503599627370496, 0],
    [1e21, 2],
    [1e-7, 8],
  ])("writes %d to %d decimals as JSON.stringify does", (value, decimals) => {
    expect(written((out) => out.rounded(value, decimals))).toBe(JSON.stringify(round(value, decimals)));
  });

  it("writes any text as JSON.stringify and UTF-8 do (RFC 8259; RFC 3629)", () => {
    const text = fc.oneof(fc.string({ unit: "binary" }), fc.string({ unit: "grapheme" }), fc.string());
    fc.assert(
      fc.property(text, (value) => {
        const out = new ByteWriter();
        out.text(value);
        expect(Array.from(out.take())).toEqual(utf8(JSON.stringify(value)));
      }),
      { seed: 3629, numRuns: 1000 },
    );
    for (const value of [
      '"',
      "\\",
      "\n\u0001",
      "5 \u00b5m at 20 \u00b0",
      "\ud83d\udc1f",
      "\ud800",
      "a".repeat(200_000),
    ]) {
      expect(written((out) => out.text(value))).toBe(JSON.stringify(value));
    }
  });
});
