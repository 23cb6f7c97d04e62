import { describe, expect, it } from "vitest";
import { drawKeyring } from "../quiz-settings.js";
import { quizSettingsOf } from "./quiz.js";

const first = "00ff1e2d3c4b5a69".repeat(4);
const second = "A1b2c3D4e5f60718".repeat(4);

describe("the settings of papers", () => {
  it("seal with the first key, and open with each", () => {
    const { keyring } = quizSettingsOf({ QUIZ_KEYS: `2026-05:${first}, 2025-11:${second}` });
    expect(keyring?.current).toBe("2026-05");
    expect(Object.keys(keyring?.keys ?? {})).toEqual(["2026-05", "2025-11"]);
    expect([...(keyring?.keys["2026-05"] ?? [])].slice(0, 4)).toEqual([0, 255, 0x1e, 0x2d]);
    expect(keyring?.keys["2025-11"]).toHaveLength(32);
  });

  it.each([
    [`a:${first}`, ["a"]],
    [`a:${first},b:${second}`, ["a", "b"]],
    [`a:${first} ,b:${second} ,  c_-1:${first}`, ["a", "b", "c_-1"]],
  ])("take as many keys as there are: %s", (value, ids) => {
    expect(Object.keys(quizSettingsOf({ QUIZ_KEYS: value }).keyring?.keys ?? {})).toEqual(ids);
  });

  it("have no key where none is given; one that is drawn is of 32 bytes, and never the same", () => {
    expect(quizSettingsOf({})).toEqual({
      keyring: undefined,
      tokenLifetime_s: 86_400,
      instructorKey: undefined,
    });
    const drawn = [drawKeyring(), drawKeyring()].map(({ current, keys }) => keys[current] ?? []);
    expect(drawn.map(({ length }) => length)).toEqual([32, 32]);
    expect(drawn[0]).not.toEqual(drawn[1]);
  });

  it("mark answers for a minute at least and a leap year at most", () => {
    const read = (value: string) => quizSettingsOf({ QUIZ_TOKEN_LIFETIME_S: value }).tokenLifetime_s;
    expect([read("60"), read("31622400")]).toEqual([60, 31_622_400]);
    for (const value of ["59", "31622401"])
      expect(() => read(value)).toThrow(/^QUIZ_TOKEN_LIFETIME_S is .* from 60 to 31622400/);
  });

  it.each([
    ["", "nothing"],
    [first, "no id"],
    [`2026-05:${first.slice(2)}`, "31 bytes"],
    [`2026-05:${first}00`, "33 bytes"],
    [`2026-05:${first.slice(1)}g`, "another sign than hexadecimal digits"],
    [`2026.05:${first}`, "an id with a dot, which parts a token"],
    [`${"i".repeat(33)}:${first}`, "an id that is too long"],
    [`a:${first};b:${second}`, "another sign between keys"],
    [`a:${first},`, "an end without a key"],
    [`a:${first},a:${second}`, "one id twice"],
  ])("refuse the keys %j: %s, and do not repeat them", (value) => {
    const reading = () => quizSettingsOf({ QUIZ_KEYS: value });
    expect(reading).toThrow(/^QUIZ_KEYS must be keys between commas/);
    expect(reading).not.toThrow(first.slice(0, 8));
  });

  it.each(["00", "ff", "0102", "00112233445566"])("refuse a key of %s over and over", (bytes) => {
    const key = bytes.repeat(32).slice(0, 64);
    expect(() => quizSettingsOf({ QUIZ_KEYS: `a:${first},b:${key}` })).toThrow(
      /^QUIZ_KEYS has a key that is not random/,
    );
  });

  it("take an instructor's key of the form of a bearer token", () => {
    const key = "aB3-._~+/aB3-._~+/==";
    expect(quizSettingsOf({ INSTRUCTOR_KEY: key }).instructorKey).toBe(key);
  });

  it.each([
    [""],
    ["short"],
    ["two words of a long key"],
    [`${"=".repeat(30)}a`],
    ["a".repeat(32)],
    ["abcabc1".repeat(5)],
    ["x".repeat(257)],
    ["ü".repeat(30)],
  ])("refuse the instructor's key %j, and do not repeat it", (value) => {
    const reading = () => quizSettingsOf({ INSTRUCTOR_KEY: value });
    expect(reading).toThrow(/^INSTRUCTOR_KEY must be 20 to 256 letters/);
    if (value !== "") expect(reading).not.toThrow(value);
  });
});
