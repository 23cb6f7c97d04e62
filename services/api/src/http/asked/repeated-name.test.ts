import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { repeatedName } from "./repeated-name.js";

describe("a repeated name", () => {
  it.each([
    ['{"a":1,"a":2}', "/a"],
    ['{"a":1,"b":{"a":1},"a":2}', "/a"],
    ['{"a":[{"b":1},{"c":1,"c":2}]}', "/a/1/c"],
    ['[[],[0,{"x":1,"x":1}]]', "/1/1/x"],
    // RFC 6901, section 4: the first element of a list is 0.
    ['[{"x":1,"x":1}]', "/0/x"],
    ['{"a":[[{"x":1,"x":1}]]}', "/a/0/0/x"],
    ['{"a":{},"b":[],"a":0}', "/a"],
    // RFC 8259, section 8.3: names are compared once escapes are undone.
    ['{"a":1,"\\u0061":2}', "/a"],
    ['{"a/b~":1,"a/b~":2}', "/a~1b~0"],
    ['{"\\"":1,"\\"":2}', '/"'],
    ['{"\\\\":1,"\\\\":2}', "/\\"],
    ['{"":1,"":2}', "/"],
    [' { "a" : "a" , "a" : null } ', "/a"],
  ])("of %s is found at %s", (text, pointer) => {
    expect(() => JSON.parse(text)).not.toThrow();
    expect(repeatedName(text)).toBe(pointer);
  });

  it.each([
    "1",
    '"a"',
    "{}",
    "[]",
    '{"a":"a","b":"a"}',
    '{"a":"b","b":"c"}',
    '[{"a":1},{"a":1}]',
    '{"a":{"a":{"a":1}}}',
    '{"a":["a","a"]}',
    '{"a":"\\",\\"a\\":1"}',
    '{"a\\\\":"\\\\","a":1}',
  ])("is not seen in %s", (text) => {
    expect(repeatedName(text)).toBeUndefined();
  });

  // fast-check's JSON values, written by the engine, never repeat a name.
  it("is found where one is put into any JSON value, and nowhere else", () => {
    fc.assert(
      fc.property(fc.json({ maxDepth: 4 }), fc.string({ unit: "binary" }), (json, name) => {
        expect(repeatedName(json)).toBeUndefined();
        const key = JSON.stringify(name);
        expect(repeatedName(`[{${key}:${json},"other ${key.slice(1)}:1,${key}:${json}}]`)).toBeDefined();
      }),
      { seed: 7, numRuns: 300 },
    );
  });
});
