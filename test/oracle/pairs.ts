/** The planner as it is beside the slow way, asked for the same scenes. */
import { vi } from "vitest";
import type { FilterChoiceAnswer } from "../../packages/planner/src/index.js";
import { seededLight } from "../golden/seed-light.js";

type InEnglish = typeof import("../../packages/answers/src/operations/in-english.test-support.js");
export type Ask = (scene: object) => FilterChoiceAnswer | undefined;

const SEARCH = "../../packages/planner/src/filter-choice";

/** As a caller asks, before it is rounded; undefined where the scene is refused. */
async function load(): Promise<Ask> {
  vi.resetModules();
  const path = "../../packages/answers/src/operations/in-english.test-support.js";
  const { answer } = (await import(path)) as InEnglish;
  return (scene) => {
    const reply = answer("filter-choice", scene);
    return reply.status === "ok" ? (reply.unshaped as FilterChoiceAnswer) : undefined;
  };
}

export async function loadBoth(): Promise<{ fast: Ask; slow: Ask }> {
  const fast = await load();
  vi.doMock(`${SEARCH}/merit.js`, () => import("./old/merit.js"));
  vi.doMock(`${SEARCH}/merits.js`, () => import("./old/merits.js"));
  const slow = await load();
  for (const name of ["merit", "merits"]) vi.doUnmock(`${SEARCH}/${name}.js`);
  return { fast, slow };
}

/** Places of the series that no golden figure and no plan is taken from. */
const FROM = 20_000;
const DAYLIGHT = [
  "daylight_basis",
  "latitude_deg",
  "longitude_deg",
  "local_time",
  "time_zone",
  "time",
  "lamps",
  "depth_m",
  "iso",
];

/** Every fourth in little light: an overcast sky, a low sun, deep, and a camera that amplifies what it gets. */
export function sceneAt(index: number): object {
  const scene = seededLight(FROM + index);
  if (index % 4 !== 3) return scene;
  const kept = Object.entries(scene).filter(([name]) => !DAYLIGHT.includes(name));
  return {
    ...Object.fromEntries(kept),
    sun_elevation_deg: 10 + (index % 7),
    cloud_oktas: 8,
    min_depth_m: 15 + (index % 11),
    max_depth_m: 30 + (index % 13),
    min_iso: 800,
    max_iso: 51_200,
  };
}
