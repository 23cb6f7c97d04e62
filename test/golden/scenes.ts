/** The scenes whose answers are kept: told ones, each for a decision that a seeded one reaches seldom, and seeded ones. */
import { readFileSync } from "node:fs";
import { mountingExamples, sceneExamples } from "../../packages/contract/src/index.js";
import { seededLight } from "./seed-light.js";
import { seededMounting } from "./seed-mounting.js";

const SEEDED_LIGHT = 84;
const SEEDED_MOUNTING = 90;

export type Scenes = Readonly<Record<string, object>>;

/** Written to files once, so that neither the seeding nor an example can move what is asked without being seen. */
export function makeLight(): Scenes {
  return { ...examples(sceneExamples), ...told("scenes"), ...series(SEEDED_LIGHT, seededLight) };
}

export function makeMounting(): Scenes {
  return {
    ...examples(mountingExamples),
    ...told("mounting-scenes"),
    ...series(SEEDED_MOUNTING, seededMounting),
  };
}

function told(name: string): Scenes {
  return JSON.parse(readFileSync(new URL(`told/${name}.json`, import.meta.url), "utf8")) as Scenes;
}

function examples(named: Readonly<Record<string, { scene: object }>>): Scenes {
  return Object.fromEntries(Object.entries(named).map(([name, { scene }]) => [name, scene]));
}

function series(count: number, make: (index: number) => object): Scenes {
  return Object.fromEntries(
    Array.from({ length: count }, (_, index) => [`seeded_${String(index).padStart(3, "0")}`, make(index)]),
  );
}
