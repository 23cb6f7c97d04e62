import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { OfflineSunfathom } from "../offline/index.js";
import { bundle, gzipKb, home, layPackage } from "./bundle.test-support.js";

const oneCall = `
  import { Sunfathom } from "@sunfathom/sdk";
  const client = new Sunfathom({ baseUrl: "https://light.example.org" });
  console.log(await client.calculations.filterChoice({ water_type: "IB", depth_m: 12 }));
`;
const everything = 'import * as sdk from "@sunfathom/sdk"; console.log(sdk);';
const offline = 'import * as sdk from "@sunfathom/sdk/offline"; console.log(sdk);';
const parts = (...names: string[]) => `
  import { offlineWith, ${names.join(", ")} } from "@sunfathom/sdk/offline/parts";
  console.log(offlineWith([${names.join(", ")}]));
`;

const methodsOf = (group: object) =>
  Object.getOwnPropertyNames(Object.getPrototypeOf(group)).filter((name) => name !== "constructor");
const { calculations, reference } = new OfflineSunfathom();

/** What a page with one part of the offline mode may weigh, in kB. */
const ceilingKb = 60;
/**
 * What a plan holds nearly all of. Its cautions, codes whose texts stand apart from them, the light as the camera meets it
 * (spread over directions, sea floors) and cameras of several classes and finishes took it over the ceiling: it is to come back under it.
 */
const planCeilingKb = 69;
const wholeCeilingKb = 95;

const readme = readFileSync(`${home}README.md`, "utf8");

/** What the README says that a part weighs. */
function saidKb(name: string): number {
  const [, said] = new RegExp(`^\\| \`${name}\` +\\| (\\d+) kB`, "m").exec(readme) ?? [];
  return Number(said);
}

let folder: string;
beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), "size-"));
  await layPackage(folder);
}, 60_000);
afterAll(() => rmSync(folder, { recursive: true }));

const kbOf = async (program: string) => gzipKb((await bundle(program, true, folder)).code);

describe("what an integrator's page downloads", { timeout: 30_000 }, () => {
  it.each([
    ["for one call", oneCall, 6],
    ["for everything online", everything, 12],
  ])("%s is small, and nothing of the offline mode", async (_what, program, kb) => {
    const { code, files } = await bundle(program, true);
    expect(gzipKb(code)).toBeLessThan(kb);
    expect(files.filter((file) => /answers|planner|optics|contract|node_modules/.test(file))).toEqual([]);
    expect(await kbOf(program)).toBeLessThan(kb);
  });

  it("for the offline mode grows no further, and the README says how large it is", async () => {
    const kb = await kbOf(offline);
    expect(kb).toBeLessThan(wholeCeilingKb);
    const [, said] = /some (\d+) kB compressed/.exec(readme) ?? [];
    expect(Math.abs(Number(said) - kb)).toBeLessThan(1);
  });

  it("is nothing at all where only types are used", async () => {
    const types = 'import { Sunfathom, memoryCache, InvalidSceneError } from "@sunfathom/sdk"; export {};';
    expect((await bundle(types, true)).code.trim()).toBe("");
  });
});

describe("what a page downloads for a part of the offline mode", { timeout: 30_000 }, () => {
  it.each(methodsOf(calculations))(
    "%s stays below its ceiling, and the README says its size",
    async (name) => {
      const kb = await kbOf(parts(name));
      expect(kb).toBeLessThanOrEqual(name === "diveAdvice" ? planCeilingKb : ceilingKb);
      expect(Math.abs(saidKb(name) - kb)).toBeLessThan(1);
    },
  );

  it.each(methodsOf(reference))("%s is a few kB", async (name) => {
    expect(await kbOf(parts(name))).toBeLessThan(8);
  });

  it("is one calculation, and no other", async () => {
    const nameOf = (name: string) => name.replace(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`);
    const all = [...methodsOf(calculations), ...methodsOf(reference)];
    for (const name of all) {
      const { code } = await bundle(parts(name), true, folder);
      expect(all.filter((other) => code.includes(`name:"${nameOf(other)}"`))).toEqual([name]);
    }
  });

  it("has once what several calculations need", async () => {
    const [one, two] = [await kbOf(parts("filterChoice")), await kbOf(parts("filterChoice", "exposureLoss"))];
    expect(two - one).toBeLessThan(6);
  });
});
