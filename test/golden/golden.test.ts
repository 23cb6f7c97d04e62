/**
 * The figures of all calculations over some hundred scenes, as they were when they were last let in: every number and code of every
 * answer, no sentence. GOLDEN=figures rewrites them, GOLDEN=scenes also the scenes; see README.md beside this file.
 */
import { existsSync, readFileSync, writeFileSync } from "node:fs";
import { expect, it } from "vitest";
import { answer, operations, readReference, references } from "../../packages/answers/src/index.js";
import { differences, type Recorded, recorded } from "./recorded.js";
import { makeLight, makeMounting, type Scenes } from "./scenes.js";

type Answers = Record<string, Recorded>;

const asked = process.env["GOLDEN"];
const isRewriting = asked === "figures" || asked === "scenes";
const SHOWN = 40;

const fileOf = (name: string) => new URL(`kept/${name}.json`, import.meta.url);

function kept<T>(name: string): T {
  return JSON.parse(readFileSync(fileOf(name), "utf8")) as T;
}

/** One entry a line, so that a change shows as the lines of the scenes that it touches. */
function keep(name: string, entries: Readonly<Record<string, unknown>>): void {
  const lines = Object.entries(entries).map(
    ([key, value]) => `${JSON.stringify(key)}:${JSON.stringify(value)}`,
  );
  writeFileSync(fileOf(name), `{\n${lines.join(",\n")}\n}\n`);
}

function scenesOf(name: string, make: () => Scenes): Scenes {
  if (asked === "scenes") keep(name, make());
  return kept<Scenes>(name);
}

const scenes: Readonly<Record<string, Scenes>> = {
  Scene: scenesOf("scenes", makeLight),
  MountingScene: scenesOf("mounting-scenes", makeMounting),
};

function scenesFor(request: string): Scenes {
  const found = scenes[request];
  if (found === undefined)
    throw new Error(`There are no golden scenes of the kind ${request}: see scenes.ts.`);
  return found;
}

/** @returns where answers differ from those kept, each as a line */
function changes(name: string, now: Answers): string[] {
  if (isRewriting) keep(name, now);
  if (!existsSync(fileOf(name))) return [`Nothing is kept for ${name}: write it with GOLDEN=figures.`];
  return Object.entries(kept<Answers>(name)).flatMap(([scene, before]) =>
    differences(before, now[scene]).map((line) => `${scene}: ${line}`),
  );
}

function expectNone(found: readonly string[]): void {
  const more = found.length > SHOWN ? `\n... and ${found.length - SHOWN} more` : "";
  const told = `${found.slice(0, SHOWN).join("\n")}${more}`;
  expect(found.length, `Figures differ from those kept:\n${told}\n`).toBe(0);
}

it.each(operations.map(({ name, request }) => ({ name, request })))(
  "$name gives the figures that are kept",
  ({ name, request }) => {
    const now = Object.fromEntries(
      Object.entries(scenesFor(request)).map(([scene, raw]) => [scene, recorded(answer(name, raw))]),
    );
    expectNone(changes(name, now));
    expect(Object.keys(kept<Answers>(name))).toEqual(Object.keys(now));
  },
  120_000,
);

it("keeps the figures of the reference data", () => {
  const now = Object.fromEntries(
    references.map((reference) => [
      reference.name,
      recorded({ status: "ok", body: readReference(reference) }),
    ]),
  );
  expectNone(changes("reference", now));
});
