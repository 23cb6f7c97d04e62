import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { languages as offered } from "../../../contract/src/index.js";
import { OfflineSunfathom } from "../offline/index.js";
import { bundle, gzipKb, home, layPackage, pageOf } from "./bundle.test-support.js";

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

/** What a page with one part of the offline mode may weigh before it runs, in kB. */
const ceilingKb = 60;
/** A plan asks nearly all of them; since it plans on a mount, is quick, and says why a balance is kept, it is above the others. */
const planCeilingKb = 66;
/** All calculations: with each that is added, and with plans on a mount, it grows. */
const wholeCeilingKb = 106.5;
/** What it loads behind that: where a scene is refused, with what finds the texts of another language, */
const laterCeilingKb = 13;
/** and what only some scenes need: what a page starts with may shrink into it. */
const restCeilingKb = 23;
/** Each language but English, answers and problems of all calculations. */
const languageCeilingKb = 29;

/** What starts a page that draws, and what is loaded behind that: all pictures, their texts and problems in each language. */
const picturesStartCeilingKb = 4;
const picturesCeilingKb = 215;

const readme = readFileSync(`${home}README.md`, "utf8");

/** What the README says that a part weighs. */
function saidKb(name: string): { start: number; rest: number } {
  const [, start, rest] =
    new RegExp(`^\\| \`${name}\` +\\| (\\d+) kB[^|]*\\| (\\d+) kB`, "m").exec(readme) ?? [];
  return { start: Number(start), rest: Number(rest) };
}

let folder: string;
beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), "size-"));
  await layPackage(folder);
});
afterAll(() => rmSync(folder, { recursive: true }));

const sum = (files: { code: string }[]) => files.reduce((kb, { code }) => kb + gzipKb(code), 0);
const kbOf = async (program: string) => {
  const { start, later, rest, languages } = await pageOf(program, folder);
  return {
    start: sum(start),
    later: sum(later),
    rest: sum(rest),
    languages: languages.map(({ code }) => gzipKb(code)),
  };
};

describe("what an integrator's page downloads", () => {
  it.each([
    ["for one call", oneCall, 6.2],
    ["for everything online", everything, 12],
  ])("%s is small, and nothing of the offline mode", async (_what, program, kb) => {
    const { code, files } = await bundle(program, true);
    expect(gzipKb(code)).toBeLessThan(kb);
    expect(files.filter((file) => /answers|planner|optics|contract|node_modules/.test(file))).toEqual([]);
    const page = await kbOf(program);
    expect(page.start).toBeLessThan(kb);
    expect(page.later + page.rest).toBe(0);
  });

  it("for the offline mode grows no further, and the README says how large it is", async () => {
    const kb = await kbOf(offline);
    expect(kb.start).toBeLessThan(wholeCeilingKb);
    expect(kb.later).toBeLessThan(laterCeilingKb);
    expect(kb.rest).toBeLessThan(restCeilingKb);
    const [, start, behind] = /some (\d+) kB compressed, and (\d+) behind that/.exec(readme) ?? [];
    expect(Math.abs(Number(start) - kb.start)).toBeLessThan(1);
    expect(Math.abs(Number(behind) - kb.later - kb.rest)).toBeLessThan(1);
  });

  it("for another language is a file of its own, whatever the page computes", async () => {
    for (const program of [offline, parts("attenuation")]) {
      const { languages } = await kbOf(program);
      expect(languages).toHaveLength(offered.length - 1);
      for (const kb of languages) expect(kb).toBeLessThan(languageCeilingKb);
    }
    expect((await kbOf(everything)).languages).toEqual([]);
  });

  it("is nothing at all where only types are used", async () => {
    const types = 'import { Sunfathom, memoryCache, InvalidSceneError } from "@sunfathom/sdk"; export {};';
    expect((await bundle(types, true)).code.trim()).toBe("");
  });
});

describe("what a page downloads to draw pictures", () => {
  it("is little to start with, the rest behind that, and no burden to pages without pictures", async () => {
    const program = 'import * as sdk from "@sunfathom/sdk/offline/pictures"; console.log(sdk);';
    const { start, later } = await kbOf(program);
    expect(start).toBeLessThan(picturesStartCeilingKb);
    expect(later).toBeLessThan(picturesCeilingKb);
    const { start: without, later: behind, rest } = await pageOf(parts("attenuation"), folder);
    const code = [...without, ...behind, ...rest].map((file) => file.code).join("");
    expect(code).not.toMatch(/www\.w3\.org\/2000\/svg/);
  });
});

describe("what a page downloads for a part of the offline mode", () => {
  it.each(methodsOf(calculations))(
    "%s stays below its ceiling, and the README says its size",
    async (name) => {
      const kb = await kbOf(parts(name));
      expect(kb.start).toBeLessThanOrEqual(name === "diveAdvice" ? planCeilingKb : ceilingKb);
      expect(kb.later).toBeLessThan(laterCeilingKb);
      const said = saidKb(name);
      expect(Math.abs(said.start - kb.start)).toBeLessThan(1);
      // The mounting of a filter asks for nothing of it, and never loads it.
      if (name === "filterMounting") return expect(said.rest).toBe(0);
      expect(kb.rest).toBeLessThan(restCeilingKb);
      expect(Math.abs(said.rest - kb.rest)).toBeLessThan(1);
    },
  );

  it.each(methodsOf(reference))("%s is a few kB", async (name) => {
    expect((await kbOf(parts(name))).start).toBeLessThan(9.5);
  });

  it("is one calculation, and no other", async () => {
    const nameOf = (name: string) => name.replace(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`);
    const all = [...methodsOf(calculations), ...methodsOf(reference)];
    for (const name of all) {
      const { start, later, rest } = await pageOf(parts(name), folder);
      const code = [...start, ...later, ...rest].map((file) => file.code).join("");
      expect(all.filter((other) => code.includes(`name:"${nameOf(other)}"`))).toEqual([name]);
    }
  });

  it("has once what several calculations need", async () => {
    const [one, two] = [await kbOf(parts("filterChoice")), await kbOf(parts("filterChoice", "exposureLoss"))];
    expect(two.start - one.start).toBeLessThan(6);
  });
});
