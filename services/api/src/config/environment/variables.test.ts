import { describe, expect, it } from "vitest";
import { z } from "zod";
import {
  gone,
  isNetwork,
  isOrigin,
  items,
  listenAddress,
  oneOf,
  readVariable,
  readVariables,
  secret,
  share,
  text,
  wholeNumber,
} from "./variables.js";

/** Reads one variable that has the value, or is not there. */
const reader =
  <T>(schema: z.ZodType<T>) =>
  (value?: string) =>
    readVariable(value === undefined ? {} : { NAME: value }, "NAME", schema);

describe("a variable", () => {
  it("of text is the environment's or the fallback, in its form or refused by name and value", () => {
    const read = reader(text(/^[a-c]+$/, "of a, b and c").default("abc"));
    expect(read()).toBe("abc");
    expect(read("cab")).toBe("cab");
    expect(() => read('d"')).toThrow(new Error('NAME is "d\\"", but must be of a, b and c.'));
    expect(() => read("")).toThrow('NAME is ""');
  });

  it("that is secret is nowhere repeated, and missing where it is not there", () => {
    const read = reader(secret(/^\d+$/, "digits").optional());
    expect(read()).toBeUndefined();
    expect(read("12")).toBe("12");
    expect(() => read("hidden")).toThrow(new Error("NAME must be digits."));
    expect(() => read("")).toThrow(new Error("NAME must be digits."));
  });

  it.each([
    [undefined, 7],
    ["5", 5],
    ["10", 10],
    ["007", 7],
  ])("of a whole number from 5 to 10: %j is %i", (value, number) => {
    expect(reader(wholeNumber([5, 10]).default(7))(value)).toBe(number);
  });

  it.each(["4", "11", "", " 7", "7 ", "-7", "+7", "7.0", "7e0", "0x7", "seven", "00000000007"])(
    "of a whole number from 5 to 10 is not %j",
    (value) => {
      expect(() => reader(wholeNumber([5, 10]))(value)).toThrow(
        new Error(`NAME is ${JSON.stringify(value)}, but must be a whole number from 5 to 10.`),
      );
    },
  );

  it("of a share is a number from 0 to 1 in plain digits", () => {
    const read = reader(share());
    expect([read("0"), read(".5"), read("0.25"), read("1")]).toEqual([0, 0.5, 0.25, 1]);
    for (const wrong of ["", "1.", "1.01", "-0", "1e-1", "half"])
      expect(() => read(wrong)).toThrow(
        `NAME is ${JSON.stringify(wrong)}, but must be a number from 0 to 1.`,
      );
  });

  it("of some words is one of them, letter by letter", () => {
    const read = reader(oneOf(["low", "high"]).default("high"));
    expect(read()).toBe("high");
    expect(read("low")).toBe("low");
    expect(() => read("LOW")).toThrow(new Error('NAME is "LOW", but must be one of low, high.'));
  });

  it("of an address is a host and a port, or off", () => {
    const fallback = { host: "127.0.0.1", port: 1 };
    const read = reader(listenAddress().default(fallback));
    expect(read()).toEqual(fallback);
    expect(read("off")).toBe("off");
    expect(read("localhost:0")).toEqual({ host: "localhost", port: 0 });
    expect(read("10.0.0.1:9464")).toEqual({ host: "10.0.0.1", port: 9464 });
    expect(read("[::1]:65535")).toEqual({ host: "::1", port: 65_535 });
    for (const wrong of [
      "",
      "on",
      ":1",
      "a:",
      "a:b",
      "a:65536",
      "::1:1",
      "[a]b:1",
      "http://a:1",
      "a:1/metrics",
    ])
      expect(() => read(wrong)).toThrow(`NAME is ${JSON.stringify(wrong)}, but must be a host and a port`);
  });

  it("of several has blanks around its commas, and every one fits", () => {
    const read = reader(items((item) => /^\d$/.test(item), "digits").default([]));
    expect(read()).toEqual([]);
    expect(read("1")).toEqual(["1"]);
    expect(read(" 1 ,2,\t3")).toEqual(["1", "2", "3"]);
    for (const wrong of ["", "1,", "1,,2", "1,x", "1 2"])
      expect(() => read(wrong)).toThrow(`NAME is ${JSON.stringify(wrong)}, but must be digits.`);
  });

  it("that is gone may not be there, not even empty", () => {
    const read = reader(gone("see OTHER."));
    expect(read()).toBeUndefined();
    for (const value of ["", "x"])
      expect(() => read(value)).toThrow(new Error("NAME is not a variable any more: see OTHER."));
  });
});

it("names the first of several variables that is not as it must be, and passes over what nobody reads", () => {
  const schema = z.object({ A: wholeNumber([0, 1]), B: oneOf(["x"]) });
  expect(readVariables({ A: "1", B: "x", PATH: "/" }, schema)).toEqual({ A: 1, B: "x" });
  expect(() => readVariables({ A: "1", B: "y" }, schema)).toThrow(
    new Error('B is "y", but must be one of x.'),
  );
});

// RFC 6454, section 6.2, and the URL Standard: default ports and trailing slashes are no part of an origin.
describe("an origin", () => {
  it.each(["https://shop.example", "http://localhost:3000", "https://[2001:db8::1]:8443"])(
    "%s is one",
    (text) => {
      expect(isOrigin(text)).toBe(true);
    },
  );

  it.each([
    "",
    "shop.example",
    "https://shop.example/",
    "https://shop.example:443",
    "https://Shop.example",
    "https://user@shop.example",
    "https://shop.example?a",
    "ws://shop.example",
    "ftp://shop.example",
    "null",
    "https:",
  ])("%j is none", (text) => {
    expect(isOrigin(text)).toBe(false);
  });
});

// RFC 4632, section 3.1, and RFC 4291, section 2.3: a prefix has at most as many bits as the address.
describe("a network", () => {
  it.each([
    "loopback",
    "10.0.0.1",
    "10.0.0.0/8",
    "10.0.0.1/32",
    "::1",
    "2001:db8::/32",
    "fc00::/7",
    "::1/128",
  ])("%s is one", (text) => {
    expect(isNetwork(text)).toBe(true);
  });

  it.each([
    "",
    "loopback/8",
    "localhost",
    "10.0.0",
    "10.0.0.256",
    "10.0.0.0/33",
    "10.0.0.0/",
    "10.0.0.0/8/8",
    "10.0.0.0/x8",
    "10.0.0.0/8x",
    "10.0.0.0/-1",
    "0.0.0.0/0",
    "0.0.0.0/7",
    "::/0",
    "::/6",
    "10.0.0.0/0x8",
    "10.0.0.0/0008",
    "::1/129",
    "::1/",
    "/8",
  ])("%j is none", (text) => {
    expect(isNetwork(text)).toBe(false);
  });
});
