/** What holds in any scene: finite numbers, ordered estimates, and no advice made worse by owning more. */
import fc from "fast-check";
import { expect, it } from "vitest";
import type { Estimate } from "../result/common.js";
import type { FilterMountingAnswer } from "../result/filter-mounting.js";
import type { FilterMountingScene } from "../scene/filter-mounting-scene.js";
import { SceneProblem } from "../scene/scene-problem.js";
import { VERDICTS } from "./fault.js";
import { filterMounting } from "./filter-mounting.js";
import { sceneOf } from "./mounting-scenes.test-support.js";

const thread = fc.constantFrom(49, 52, 58, 67, 72, 77, 82);
const thickness = fc.constantFrom(1.5, 2, 3, 5, 8, 12);
const length = (min: number, max: number) => fc.double({ min, max, noNaN: true });

const ringsOf = (maxLength: number) =>
  fc
    .array(fc.tuple(thread, thread, thickness), { maxLength })
    .map((list) =>
      list.map(([from_mm, to_mm, thickness_mm], i) => ({ id: `r${i}`, from_mm, to_mm, thickness_mm })),
    );

const sceneArbitrary: fc.Arbitrary<FilterMountingScene> = fc
  .record(
    {
      port_kind: fc.constantFrom("flat", "dome", "none"),
      dome_radius_mm: length(30, 200),
      lens_kind: fc.constantFrom("wide", "standard", "fisheye"),
      focal_length_mm: length(2, 120),
      sensor_diagonal_mm: length(5, 60),
      field_of_view_deg: length(5, 200),
      lens_thread_mm: thread,
      port_thread_mm: thread,
      filter_thread_mm: thread,
      filter_clear_diameter_mm: length(20, 90),
      entrance_pupil_distance_mm: length(1, 90),
      holder: fc.constantFrom(
        "screw_on_lens",
        "screw_on_port",
        "flip",
        "clip_on",
        "rear_sheet",
        "action_camera",
      ),
      rear_opening_width_mm: length(10, 50),
      rear_opening_height_mm: length(10, 50),
      f_number: length(1.2, 22),
      rings: ringsOf(4),
      filter_change_underwater: fc.constantFrom("none", "flip", "clip_on"),
      lens_interchangeable: fc.boolean(),
      rear_fixing: fc.constantFrom("slot", "tape"),
      sheet_thickness_mm: length(0.02, 2),
      sheet_refractive_index: length(1.3, 1.7),
      filter_thickness_mm: length(1, 12),
      filter_material: fc.constantFrom("glass", "resin"),
      wet_lens: fc.constantFrom("none", "wide", "close_up"),
      zoom_travel_mm: fc.constantFrom(0, 5, 30),
      lens_port_gap_mm: length(0, 60),
    },
    { requiredKeys: ["port_kind", "lens_kind", "rings"] },
  )
  .map((changes) =>
    sceneOf(
      changes as Partial<FilterMountingScene>,
      ...(
        [
          "dome_radius_mm",
          "focal_length_mm",
          "sensor_diagonal_mm",
          "lens_thread_mm",
          "filter_thread_mm",
        ] as const
      ).filter((field) => !(field in changes)),
    ),
  );

/** Undefined where the scene is impossible, which has its own tests. */
function answerOf(scene: FilterMountingScene): FilterMountingAnswer | undefined {
  try {
    return filterMounting(scene);
  } catch (error) {
    if (error instanceof SceneProblem) return undefined;
    throw error;
  }
}

function checkValues(value: unknown): void {
  if (typeof value === "number") expect(Number.isFinite(value)).toBe(true);
  else if (typeof value === "string") expect(value).not.toMatch(/NaN|undefined|Infinity (?!is)/);
  else if (Array.isArray(value)) value.forEach(checkValues);
  else if (typeof value === "object" && value !== null) {
    if ("likely" in value) {
      const { low, likely, high } = value as Estimate;
      expect(low).toBeLessThanOrEqual(likely);
      expect(likely).toBeLessThanOrEqual(high);
    }
    Object.values(value).forEach(checkValues);
  } else expect(typeof value).toBe("boolean");
}

it("answers with finite numbers, ordered estimates and no empty fields, or with a problem", () => {
  let answered = 0;
  fc.assert(
    fc.property(sceneArbitrary, (scene) => {
      const answer = answerOf(scene);
      if (!answer) return;
      answered++;
      checkValues(answer);
      if (answer.verdict === "fits" && answer.vignetting)
        expect(answer.vignetting.corner_light_percent.low).toBeGreaterThanOrEqual(50);
      if (scene.holder && answer.holder !== scene.holder) {
        const asked = answer.options.find(({ holder }) => holder === scene.holder);
        expect(asked?.verdict).toBe("does_not_fit");
      }
    }),
    { seed: 67, numRuns: 600 },
  );
  expect(answered).toBeGreaterThan(200);
});

/** Scenes in which rings matter: a lens with a thread, a filter with another, some rings. */
const ringSceneArbitrary = fc
  .record({
    port_kind: fc.constantFrom("flat" as const, "dome" as const),
    focal_length_mm: length(14, 70),
    lens_thread_mm: thread,
    port_thread_mm: thread,
    filter_thread_mm: thread,
    f_number: length(2, 16),
    rings: ringsOf(5),
    filter_thickness_mm: length(2, 8),
    holder: fc.constant("screw_on_lens" as const),
  })
  .map((changes) => sceneOf(changes));

it("gives no worse verdict for any holder when a ring is added to those owned", () => {
  const rank = (answer: FilterMountingAnswer, holder: string) =>
    VERDICTS.indexOf(answer.options.find((option) => option.holder === holder)!.verdict);
  let closed = 0;
  let better = 0;
  fc.assert(
    fc.property(ringSceneArbitrary, thread, thread, thickness, (scene, from_mm, to_mm, thickness_mm) => {
      const added = { id: "added", from_mm, to_mm, thickness_mm };
      const before = filterMounting(scene);
      const after = filterMounting({ ...scene, rings: [...scene.rings, added] });
      for (const { holder } of before.options) {
        expect(rank(after, holder)).toBeLessThanOrEqual(rank(before, holder));
        if (rank(after, holder) < rank(before, holder)) better++;
      }
      if (before.ring_chain?.closes === false && after.ring_chain?.closes === true) closed++;
    }),
    { seed: 82, numRuns: 1500 },
  );
  expect(closed).toBeGreaterThan(10);
  expect(better).toBeGreaterThan(10);
});
