import { describe, expect, it } from "vitest";
import { bundle, gzipKb } from "./bundle.test-support.js";

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

  // 60 kB is wanted, and not reached: of 114 kB the position of the sun takes 23, tables of optics 15, the contract 13,
  // texts 10, and the decisions most of the rest. One calculation alone takes 60 of the model without its contract.
  it("for the offline mode grows no further", async () => {
    expect(gzipKb((await bundle(offline, true)).code)).toBeLessThan(120);
  });

  it("is nothing at all where only types are used", async () => {
    const types = 'import { Sunfathom, memoryCache, InvalidSceneError } from "@sunfathom/sdk"; export {};';
    expect((await bundle(types, true)).code.trim()).toBe("");
  });
});
