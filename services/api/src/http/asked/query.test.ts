import { fieldErrorCodes, maxErrors } from "@sunfathom/contract";
import { problems } from "@sunfathom/words/en/problems";
import { describe, expect, it } from "vitest";
import { operations } from "../../operations.js";
import { fitsQuery, queryFieldsOf, readQuery as read, refusedQuery } from "./query.js";

const fieldsFor = (path: string) => {
  const operation = operations.find((entry) => entry.path === path);
  if (operation === undefined) throw new Error(`There is no ${path}.`);
  return queryFieldsOf(operation);
};
const light = fieldsFor("/v1/filter-choice");
const mounting = fieldsFor("/v1/filter-mounting");
const texts = problems.query;
const readQuery = (query: string) => read(query, light, texts);

const codes = (query: string) => readQuery(query).errors.map(({ pointer, code }) => `${pointer} ${code}`);

describe("a query string", () => {
  it("is read into numbers and names", () => {
    const { scene, errors } = readQuery("water_type=IB&depth_m=12.5&sun_elevation_deg=40&lamp_led=LED-B4");
    expect(errors).toEqual([]);
    expect({ ...scene }).toEqual({
      water_type: "IB",
      depth_m: 12.5,
      sun_elevation_deg: 40,
      lamp_led: "LED-B4",
    });
  });

  it("may be empty, or hold empty places", () => {
    expect({ ...readQuery("").scene }).toEqual({});
    expect({ ...readQuery("&&iso=200&").scene }).toEqual({ iso: 200 });
  });

  // RFC 8259, section 6: how JSON writes numbers.
  it.each(["0", "-0", "12", "12.5", "-3.25", "1e2", "1.5E-3", "0.5"])("takes %s as a number", (text) => {
    expect(readQuery(`iso=${text}`).scene["iso"]).toBe(Number(text));
  });

  it.each([
    "0x10",
    "1e400",
    "-1e400",
    "Infinity",
    "NaN",
    "%2012",
    "12%20",
    "+12",
    "012",
    ".5",
    "5.",
    "1_000",
    "1,5",
    "twelve",
    "true",
    "null",
  ])("does not take %s as a number", (text) => {
    expect(codes(`iso=${text}`)).toEqual(["/iso not_a_number"]);
    expect(readQuery(`iso=${text}`).scene).not.toHaveProperty("iso");
  });

  it.each(["depth_m=", "depth_m", "water_type="])("does not take %s for a value", (query) => {
    expect(codes(query)).toEqual([`/${query.replace("=", "")} empty_value`]);
  });

  it("takes a parameter once", () => {
    for (const query of ["iso=100&iso=200", "iso=100&iso=200&iso=300", "iso=1&bits=8&iso=1&iso=1&iso=1"])
      expect(codes(query)).toEqual(["/iso repeated_parameter"]);
    expect(readQuery("iso=100&iso=200").scene).not.toHaveProperty("iso");
  });

  it.each([
    "lamps",
    "kd_samples",
    "card_samples",
    "filter_transmittance",
    "transfer_curve",
    "locked_balance",
  ])("has no room for %s", (name) => {
    expect(codes(`${name}=1`)).toEqual([`/${name} needs_post`]);
    expect(fitsQuery(light, name)).toBe(false);
  });

  it("has room for numbers and words, and for no field that there is not", () => {
    for (const name of ["iso", "water_type", "time"]) expect(fitsQuery(light, name)).toBe(true);
    expect(fitsQuery(light, "dept_m")).toBe(false);
  });

  it("refuses escapes that cannot be decoded", () => {
    expect(codes("water_type=%zz&iso=%E0%A4%A")).toEqual([
      "/water_type malformed_escape",
      "/iso malformed_escape",
    ]);
  });

  it("says of each error what is wrong and what is allowed", () => {
    const errors = readQuery("iso=1&iso=2&iso=3&bits=&depth_m=x&lamps=1&water_type=%zz&%zz=1").errors;
    expect(errors.map(({ pointer, code }) => [pointer, code])).toEqual([
      ["/iso", "repeated_parameter"],
      ["/bits", "empty_value"],
      ["/depth_m", "not_a_number"],
      ["/lamps", "needs_post"],
      ["/water_type", "malformed_escape"],
      ["/%zz", "malformed_escape"],
    ]);
    for (const { message, allowed } of errors) {
      expect(message).toMatch(/^\S.+\.$/);
      expect(allowed).toMatch(/^\S.+[^.]$/);
    }
  });

  // RFC 3986 has no other meaning for a plus; RFC 3339 offsets begin with one.
  it("takes a plus for a plus", () => {
    const instant = "2026-03-10T10:15:00+02:00";
    expect(readQuery(`time=${instant}`).scene["time"]).toBe(instant);
    expect(readQuery(`time=${encodeURIComponent(instant)}`).scene["time"]).toBe(instant);
  });

  it("leaves unknown names to the check of the scene, whatever they are called", () => {
    const { scene, errors } = readQuery("__proto__=1&constructor=2&a%2Fb=3&lamps[0]=4");
    expect(errors).toEqual([]);
    expect(Object.entries(scene)).toEqual([
      ["__proto__", "1"],
      ["constructor", "2"],
      ["a/b", "3"],
      ["lamps[0]", "4"],
    ]);
  });
});

describe("a query string for another kind of scene", () => {
  it("is read by that scene's fields", () => {
    const { scene, errors } = read(
      "port_kind=flat&focal_length_mm=16&lens_interchangeable=false",
      mounting,
      texts,
    );
    expect(errors).toEqual([]);
    expect({ ...scene }).toEqual({ port_kind: "flat", focal_length_mm: 16, lens_interchangeable: false });
  });

  it.each(["1", "no", "TRUE", "False", "%20true"])("leaves %s to the check, as no yes and no no", (text) => {
    const { scene } = read(`lens_interchangeable=${text}`, mounting, texts);
    expect(scene["lens_interchangeable"]).toBe(decodeURIComponent(text));
  });

  it("has no room for rings", () => {
    expect(fitsQuery(mounting, "lens_interchangeable")).toBe(true);
    expect(fitsQuery(mounting, "rings")).toBe(false);
    expect(fitsQuery(mounting, "water_type")).toBe(false);
    expect(read("rings=52-67", mounting, texts).errors).toEqual([
      expect.objectContaining({
        pointer: "/rings",
        code: "needs_post",
        allowed: "the same scene as the body of a POST",
      }),
    ]);
  });
});

describe("a request that takes no query", () => {
  it("names what it refuses", () => {
    expect(refusedQuery("", texts)).toEqual([]);
    expect(refusedQuery("a=1&b%2Fc&%zz", texts).map(({ pointer }) => pointer)).toEqual([
      "/a",
      "/b~1c",
      "/%zz",
    ]);
  });

  it("names no more of it than a problem lists", () => {
    expect(refusedQuery("a&".repeat(2000), texts)).toHaveLength(maxErrors);
  });

  // The codes are the contract's; each error says in words, too, what is wrong and what is allowed.
  it("says of each what is wrong and what is allowed", () => {
    for (const { code, message, allowed } of refusedQuery("a=1&b", texts)) {
      expect(fieldErrorCodes).toContain(code);
      expect(message).toMatch(/^\S.+\.$/);
      expect(allowed).toMatch(/^\S.+[^.]$/);
    }
  });
});
