import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { bundle, gzipKb, home } from "./bundle.test-support.js";

const oneCall = `
  import { Sunfathom } from "@sunfathom/sdk";
  const client = new Sunfathom({ baseUrl: "https://light.example.org" });
  console.log(await client.calculations.filterChoice({ water_type: "IB", depth_m: 12 }));
`;
const everything = 'import * as sdk from "@sunfathom/sdk"; console.log(sdk);';
const offline = 'import * as sdk from "@sunfathom/sdk/offline"; console.log(sdk);';

describe("what an integrator's page downloads", { timeout: 30_000 }, () => {
  it.each([
    ["for one call", oneCall, 6],
    ["for everything online", everything, 12],
  ])("%s is small, and nothing of the offline mode", async (_what, program, ceilingKb) => {
    const { code, files } = await bundle(program, true);
    expect(gzipKb(code)).toBeLessThan(ceilingKb);
    expect(files.filter((file) => /answers|planner|optics|contract|node_modules/.test(file))).toEqual([]);
  });

  // 60 kB is wanted, and not reached: of 84 kB texts take 18, optics 15 and its tables 7, where a filter is mounted 9, the
  // other decisions 21, scenes and their rules 12. One calculation alone would take some 50, a whole dive's advice 66.
  it("for the offline mode grows no further, and the README says how large it is", async () => {
    const kb = gzipKb((await bundle(offline, true)).code);
    expect(kb).toBeLessThan(88);
    const [, said] = /some (\d+) kB compressed/.exec(readFileSync(`${home}README.md`, "utf8")) ?? [];
    expect(Math.abs(Number(said) - kb)).toBeLessThan(5);
  });

  it("is nothing at all where only types are used", async () => {
    const types = 'import { Sunfathom, memoryCache, InvalidSceneError } from "@sunfathom/sdk"; export {};';
    expect((await bundle(types, true)).code.trim()).toBe("");
  });
});
