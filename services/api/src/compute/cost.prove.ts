// That costs bound the time that calculations take, by ratio: nothing takes longer than its cost in attenuations says, within a
// factor that a busy processor and a compiler that is still learning explain; and no cost is made up out of nothing.
import { toBytes } from "@sunfathom/answers";
import { itemsFor } from "@sunfathom/quiz";
import { expect, it } from "vitest";
import { operations } from "../operations.js";
import { costOfCalculation, costOfPaper } from "./cost.js";

/** A calculation may take so many times what its cost says, and must take more than so small a part of it. */
const most = 4;
const least = 1 / 25;

const lamps = (count: number) =>
  Array.from({ length: count }, (_, n) => ({
    flux_lm: 3000 + n,
    cct_K: 5000 + n,
    distance_m: 0.8 + n / 100,
  }));
const kit = (count: number) =>
  Array.from({ length: count }, (_, n) => ({
    id: `f${n}`,
    item: "lens_filter",
    filter_kind: n % 2 === 0 ? "red" : "magenta",
    filter_density: 0.1 + n * 0.02,
  }));
const reef = { water_type: "IB", min_depth_m: 5, max_depth_m: 18 };
const deep = { water_type: "9C", min_depth_m: 0.1, max_depth_m: 100 };

/** From the least that a scene can be to the most that is taken. */
const scenes = {
  "one depth": { water_type: "IB", depth_m: 10 },
  reef,
  "by place and time": {
    visibility_m: 25,
    water_hue: "blue",
    latitude_deg: -47.3,
    longitude_deg: -128.4,
    local_time: "2026-03-10T10:15",
    time_zone: "Etc/GMT+9",
    min_depth_m: 5,
    max_depth_m: 18,
  },
  "by visibility": { visibility_m: 3.3, water_hue: "green", depth_m: 10 },
  "by visibility, down to where nothing is left": {
    visibility_m: 27,
    water_hue: "green",
    min_depth_m: 0.1,
    max_depth_m: 55,
  },
  "two lamps": { ...reef, lamps: lamps(2) },
  "a large kit": { ...reef, kit: kit(64) },
  deep,
  "six lamps": { ...reef, lamps: lamps(6) },
  "the most": { ...deep, lamps: lamps(6), kit: kit(64), filter_change_underwater: "flip" },
};

/** Processor time, ms: the least of some rounds, since others only ever add to it. */
function timeOf(work: (round: number) => void): number {
  let least_ms = Number.POSITIVE_INFINITY;
  let whole_ms = 0;
  for (let round = 0; round < 40 && (round < 4 || whole_ms < 1500); round += 1) {
    const before = process.cpuUsage();
    work(round);
    const { user, system } = process.cpuUsage(before);
    const took_ms = (user + system) / 1000;
    whole_ms += took_ms;
    if (took_ms > 0) least_ms = Math.min(least_ms, took_ms);
  }
  return least_ms;
}

const calculations = operations.filter(({ name }) => name !== "filter-mounting");

function answered(name: string, scene: object, round: number): void {
  const operation = calculations.find((known) => known.name === name);
  const answer = operation?.reply({ ...scene, wind_speed_m_s: 3 + (round % 1000) / 100 });
  if (answer?.status !== "ok") throw new Error(`${name} has no answer.`);
  toBytes(answer);
}

/** One attenuation at one depth, ms: of a hundred, as one is too short to be measured. */
const unit_ms =
  timeOf((round) => {
    for (let n = 0; n < 100; n += 1) answered("attenuation", scenes["one depth"], round * 100 + n);
  }) / 100;

for (const { name, prepare } of calculations) {
  it.each(Object.entries(scenes))(`${name} costs what it takes: %s`, (_, scene) => {
    const prepared = prepare(scene);
    if (prepared.status !== "ready") throw new Error("The scene is not valid.");
    const cost = costOfCalculation(name, prepared.scene);
    const units = timeOf((round) => answered(name, scene, round)) / unit_ms;
    console.log(
      `${name}: cost ${cost}, took ${units.toFixed(1)} attenuations, ${(units / cost).toFixed(2)} of it`,
    );
    expect(units / cost).toBeLessThan(most);
    expect(units / cost).toBeGreaterThan(least);
  });
}

it.each(["beginner", "working", "expert"] as const)("a paper costs what it takes: %s", (level) => {
  const units =
    timeOf((round) =>
      itemsFor({ seed: `costs ${round}`, level, count: 100, units: "metric", language: "en" }),
    ) / unit_ms;
  console.log(`100 questions: cost ${costOfPaper(100)}, took ${units.toFixed(1)} attenuations`);
  expect(units / costOfPaper(100)).toBeLessThan(most);
  expect(units / costOfPaper(100)).toBeGreaterThan(least);
});
