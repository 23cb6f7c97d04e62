// That costs bound the time that calculations take, by ratio: nothing takes longer than its cost in attenuations says, within a
// factor that a busy processor and a compiler that is still learning explain; and no cost is made up out of nothing.
import { toBytes } from "@sunfathom/answers";
import { itemsFor, QuizProblem } from "@sunfathom/quiz";
import { describe, expect, it } from "vitest";
import { draw, drawable } from "../features/pictures/draw.js";
import { sheetOperations } from "../features/sheets/index.js";
import { planTrip, prepareTrip, tripOperations } from "../features/trips/index.js";
import { bytesPerUnit } from "../limiting/limiter.js";
import { operations } from "../operations.js";
import { tongueOf } from "../tongues.js";
import { costOfCalculation, costOfErrors, costOfForm, costOfPaper, costOfPicture } from "./cost.js";
import { least, most, openings, scenes, timeOf, trips } from "./cost.test-support.js";

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

it("a paper costs what it takes that avoids all there is of some kinds", () => {
  const asked = { level: "working", units: "metric", language: "en" } as const;
  const templates = ["balance_lasts", "backscatter_order", "card_reading", "filter_two_dives"];
  const all = (template: string) => {
    const found = new Set<string>();
    for (let count = 40; count > 0; ) {
      try {
        const paper = {
          ...asked,
          seed: `all ${found.size}`,
          count,
          templates: [template],
          avoid: [...found],
        };
        for (const { fingerprint } of itemsFor(paper)) found.add(fingerprint);
      } catch (error) {
        if (!(error instanceof QuizProblem)) throw error;
        count = Math.min(count - 1, Number(Object(error.refusal.parameters).found));
      }
    }
    return [...found];
  };
  const avoid = templates.flatMap(all);
  const units =
    timeOf((round) => {
      try {
        itemsFor({ ...asked, seed: `none ${round}`, count: 1, templates, avoid });
      } catch (error) {
        if (!(error instanceof QuizProblem)) throw error;
      }
    }) / unit_ms;
  const cost = costOfPaper(1, avoid.length);
  console.log(`${avoid.length} avoided: cost ${cost}, took ${units.toFixed(1)} attenuations`);
  expect(units / cost).toBeLessThan(most);
  expect(units / cost).toBeGreaterThan(least);
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

for (const { name, types, prepare } of sheetOperations) {
  const bodies: Readonly<Record<string, object>> = name === "cutting-templates" ? openings : scenes;
  describe.each(Object.keys(types))(`${name}, %s`, (format) => {
    it.each(Object.entries(bodies))("costs what it takes: %s", (_, body) => {
      const tongue = tongueOf("en");
      const made = (round: number) => {
        const changed = "water_type" in body || "depth_m" in body || "min_depth_m" in body;
        const own = changed ? { ...body, wind_speed_m_s: 3 + (round % 1000) / 100 } : body;
        const ready = prepare(tongue, own, format);
        if (ready.status !== "ready") throw new Error("The body is not valid.");
        const { status } = ready.make();
        if (status !== "ok") throw new Error(`${name} has no file.`);
        return ready.cost;
      };
      const cost = made(0);
      const units = timeOf(made) / unit_ms;
      console.log(
        `${name}, ${format}: cost ${cost}, took ${units.toFixed(1)} attenuations, ${(units / cost).toFixed(2)} of it`,
      );
      expect(units / cost).toBeLessThan(most);
      expect(units / cost).toBeGreaterThan(least);
    });
  });
}

for (const operation of tripOperations) {
  const cases = operation.forms.flatMap((form) =>
    Object.entries(trips(operation.name)).map(([of, body]) => [form, of, body] as const),
  );
  it.each(cases)(`${operation.name} costs what it takes, as %s: %s`, (form, _, body) => {
    const made = (round: number) => {
      const bytes = Buffer.from(JSON.stringify(body(3 + (round % 1000) / 100)));
      const { status } = planTrip({ name: operation.name, bytes, form, language: "en" });
      if (status !== "ok") throw new Error(`${operation.name} has no answer.`);
    };
    const ready = prepareTrip(operation, body(3), tongueOf("en"));
    if (ready.status !== "ready") throw new Error("The body is not valid.");
    // Its scenes are prepared, and paid for, where it is read; and again where it is planned.
    const cost = ready.cost + ready.preparing;
    const units = timeOf(made) / unit_ms;
    console.log(
      `${operation.name}: cost ${cost}, took ${units.toFixed(1)} attenuations, ${(units / cost).toFixed(2)} of it`,
    );
    expect(units / cost).toBeLessThan(most);
    expect(units / cost).toBeGreaterThan(least);
  });
}

it("telling what unknown names were meant to be costs what it takes", () => {
  const [{ prepare }] = calculations as [(typeof calculations)[number]];
  const strangers = Object.fromEntries(Array.from({ length: 60 }, (_, n) => [`maxdeptt${n}`, n]));
  const refused = prepare(strangers);
  if (refused.status !== "problem") throw new Error("The scene is valid.");
  const cost = costOfErrors(refused.problem);
  const units = timeOf(() => prepare(strangers)) / unit_ms;
  console.log(`${cost} for errors that took ${units.toFixed(1)} attenuations`);
  expect(units / cost).toBeLessThan(most);
});

// Every request for a calculation has its scene prepared on the thread that answers, before anybody knows what it costs.
it.each(Object.entries(scenes))(
  "a scene costs what it takes to be brought into its one form: %s",
  (_, scene) => {
    const [{ prepare }] = calculations as [(typeof calculations)[number]];
    const ready = prepare(scene);
    if (ready.status !== "ready") throw new Error("The scene is not valid.");
    const cost = 1 + JSON.stringify(scene).length / bytesPerUnit + costOfForm(ready.scene);
    const units = timeOf(() => prepare(structuredClone(scene))) / unit_ms;
    console.log(`${cost.toFixed(1)} for a form that took ${units.toFixed(1)} attenuations`);
    expect(units / cost).toBeLessThan(most);
  },
);
