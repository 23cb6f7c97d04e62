import { setFlagsFromString } from "node:v8";
import { runInThisContext } from "node:vm";
import { describe, expect, it } from "vitest";
import { given, joined } from "./fields.js";

/** Whether two objects have one hidden class; asks V8 itself. */
setFlagsFromString("--allow-natives-syntax");
const sameClass = runInThisContext("(one, other) => %HaveSameMap(one, other)");

/** How many hidden classes the later ones of some hundred objects have among them. */
function classesOf(make: (n: number) => object): number {
  const made = Array.from({ length: 500 }, (_, n) => make(n)).slice(200);
  return made.filter((object, n) => !made.slice(0, n).some((earlier) => sameClass(earlier, object))).length;
}

const numbered = (prefix: string, value: number) =>
  Object.fromEntries(Array.from({ length: 12 }, (_, n) => [`${prefix}${n}`, value]));

describe("parts joined", () => {
  it("keep their order, and the last of a name counts", () => {
    expect(JSON.stringify(joined({ b: 1, a: 2 }, {}, { c: 3, b: 4 }))).toBe('{"b":4,"a":2,"c":3}');
  });

  it("are of one hidden class, however many are made, where literals of spreads are not", () => {
    const water = (n: number) => given({ water_type: "IB", chlorophyll_mg_m3: n }, ["water_type"]);
    const camera = (n: number) => numbered("camera", n);
    const sun = (n: number) => ({ daylight_basis: "sun", sun_elevation_deg: n, wind_speed_m_s: n / 9 });
    const dive = (n: number) => ({ min_depth_m: 5, max_depth_m: 9 + n, subject_facing: "camera" });
    expect(classesOf((n) => joined(water(n), sun(n), dive(n), camera(n), { lamps: [] }))).toBe(1);
    const spread = (n: number) => ({ ...water(n), ...sun(n), ...dive(n), ...camera(n), lamps: [] });
    expect(classesOf(spread)).toBeGreaterThan(100);
  });
});
