/**
 * The figures of calculations over some hundred scenes, as they were when they were last let in: every number and code of every
 * answer, no sentence. GOLDEN=figures rewrites them, GOLDEN=scenes also the scenes; see README.md beside this file. Figures that
 * differ are only rewritten under another version of the model.
 */
import { existsSync, readFileSync, writeFileSync } from "node:fs";
import { expect, it } from "vitest";
import { modelVersion } from "../../packages/answers/src/index.js";
import { answer, operations } from "../../packages/answers/src/operations/in-english.test-support.js";
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

/** By the component of the contract that a calculation takes. */
const scenes: Readonly<Record<string, { file: string; make: () => Scenes }>> = {
  Scene: { file: "scenes", make: makeLight },
  MountingScene: { file: "mounting-scenes", make: makeMounting },
};

/** Figures that differ are let in under another version alone: two answers of one version can be compared. */
function expectNone(found: readonly string[], isRaised: boolean): void {
  if (isRewriting && isRaised) return;
  const more = found.length > SHOWN ? `\n... and ${found.length - SHOWN} more` : "";
  const told = `${found.slice(0, SHOWN).join("\n")}${more}`;
  const way =
    "Where they are meant to, raise MODEL_VERSION in packages/planner/src/model-version.ts, tell it in packages/planner/CHANGELOG.md, and write them with GOLDEN=figures.";
  expect(found.length, `Figures differ from those kept. ${way}\n${told}\n`).toBe(0);
}

function hold(name: string, now: Answers, isRaised: boolean): void {
  if (!existsSync(fileOf(name))) {
    expect(isRewriting, `Nothing is kept for ${name}: write it with GOLDEN=figures.`).toBe(true);
    return;
  }
  expectNone(
    Object.entries(kept<Answers>(name)).flatMap(([scene, before]) =>
      differences(before, now[scene]).map((line) => `${scene}: ${line}`),
    ),
    isRaised,
  );
}

/** What one file of tests holds: two share the work, so that two cores do. */
export interface Held {
  /** Which calculations, by their names. */
  isOurs: (name: string) => boolean;
  /** Where it says under which version of the model they were written. */
  version: "version" | "plan-version";
}

/** @returns how to hold other figures */
export function holdGolden({ isOurs, version }: Held): (name: string, now: Answers) => void {
  const isRaised = kept<{ model_version: string }>(version).model_version !== modelVersion;

  it.each(operations.filter(({ name }) => isOurs(name)).map(({ name, request }) => ({ name, request })))(
    "$name gives the figures that are kept",
    ({ name, request }) => {
      const kind = scenes[request];
      if (kind === undefined)
        throw new Error(`There are no golden scenes of the kind ${request}: see scenes.ts.`);
      const answersTo = (to: Scenes): Answers =>
        Object.fromEntries(Object.entries(to).map(([scene, raw]) => [scene, recorded(answer(name, raw))]));
      const before = kept<Scenes>(kind.file);
      const now = answersTo(before);
      hold(name, now, isRaised);
      if (isRewriting) keep(name, asked === "scenes" ? answersTo(kind.make()) : now);
      expect(Object.keys(kept<Answers>(name))).toEqual(
        Object.keys(asked === "scenes" ? kind.make() : before),
      );
    },
    600_000,
  );

  it("was written under the version that the model has, which its changelog tells", () => {
    if (isRewriting) keep(version, { model_version: modelVersion });
    expect(kept(version), "Write the figures under the new version with GOLDEN=figures.").toEqual({
      model_version: modelVersion,
    });
    const changelog = new URL("../../packages/planner/CHANGELOG.md", import.meta.url);
    const [newest] = /^## .*/m.exec(readFileSync(changelog, "utf8")) ?? [];
    expect(newest).toBe(`## ${modelVersion}`);
  });

  return (name, now) => {
    hold(name, now, isRaised);
    if (isRewriting) keep(name, now);
  };
}

/** Writes the scenes anew where that is asked. */
export function keepScenes(): void {
  if (asked === "scenes") for (const { file, make } of Object.values(scenes)) keep(file, make());
}
