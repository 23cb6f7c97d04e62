import { describe, expect, it } from "vitest";
import { member, topLevelName } from "./pointer.js";

// RFC 6901, section 5: the pointers to the members of its example document.
describe("a JSON pointer", () => {
  it.each([
    ["foo", "/foo"],
    ["", "/"],
    ["a/b", "/a~1b"],
    ["c%d", "/c%d"],
    ["e^f", "/e^f"],
    ["g|h", "/g|h"],
    ["i\\j", "/i\\j"],
    ['k"l', '/k"l'],
    [" ", "/ "],
    ["m~n", "/m~0n"],
  ])("to the member %j is %j", (name, pointer) => {
    expect(member("", name)).toBe(pointer);
    expect(topLevelName(pointer)).toBe(name);
  });

  it("leads on from another", () => {
    expect(member(member("/lamps", "0"), "flux_lm")).toBe("/lamps/0/flux_lm");
    expect(topLevelName("/lamps/0/flux_lm")).toBe("lamps");
  });

  // RFC 6901, section 4: "~01" is the name "~1", never "/".
  it("reads escapes in the right order", () => {
    expect(topLevelName("/~01")).toBe("~1");
  });

  it("to the whole document is empty and names no member", () => {
    expect(topLevelName("")).toBeUndefined();
  });
});
