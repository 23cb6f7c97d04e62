// That costs bound the time that calculations take, by ratio: nothing takes longer than its cost in attenuations says, within a
// factor that a busy processor and a compiler that is still learning explain; and no cost is made up out of nothing.
import { toBytes } from "@sunfathom/answers";
import { itemsFor } from "@sunfathom/quiz";
import { expect, it } from "vitest";
import { operations } from "../operations.js";
import { draw, drawable } from "../pictures/draw.js";
import { costOfCalculation, costOfPaper, costOfPicture } from "./cost.js";
import { least, most, scenes, timeOf } from "./cost.test-support.js";

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

for (const { picture, operation } of drawable) {
  it.each(Object.entries(scenes))(`${picture.name} costs what it takes: %s`, (_, scene) => {
    for (const look of [
      { format: "svg", width_px: 600, theme: "light" },
      { format: "png", width_px: 600, theme: "light" },
      { format: "png", width_px: 1600, theme: "dark" },
    ] as const) {
      const cost = costOfPicture({ of: operation.name, drawing: picture.cost() }, scene, look);
      const units =
        timeOf((round) => {
          const { status } = draw({
            name: picture.name,
            scene: { ...scene, wind_speed_m_s: 3 + (round % 1000) / 100 },
            look,
            language: "en",
          });
          if (status !== "ok") throw new Error(`${picture.name} has no picture.`);
        }) / unit_ms;
      console.log(
        `${picture.name}, ${look.format} ${look.width_px}: cost ${cost}, took ${units.toFixed(1)} attenuations, ${(units / cost).toFixed(2)} of it`,
      );
      expect(units / cost).toBeLessThan(most);
      expect(units / cost).toBeGreaterThan(least);
    }
  });
}
