import type { FilterMountingScene, Scene } from "@sunfathom/planner";
import { expectTypeOf, it } from "vitest";
import type { Plan } from "./calculation.js";

interface Wire {
  scene: object;
  model: object;
  depths: { depth_m: number; cct_K?: number | undefined }[];
}
interface Own {
  depths: { depth_m: number; cct_K?: number }[];
  sources: string[];
}

it("fits a calculation that hands over what the contract declares, and no other", () => {
  expectTypeOf<(scene: Scene) => Own>().toExtend<Plan<Own, Wire>>();
  type Elsewhere = (scene: FilterMountingScene) => Own;
  expectTypeOf<Elsewhere>().toExtend<Plan<Own, Wire, FilterMountingScene>>();
  expectTypeOf<Elsewhere>().not.toExtend<Plan<Own, Wire>>();
  type More = Own & { depths: { depth_m: number; duv?: number }[] };
  expectTypeOf<(scene: Scene) => More>().not.toExtend<Plan<More, Wire>>();
  expectTypeOf<Plan<More, Wire>>().toEqualTypeOf<{ notInTheContract: "duv" }>();
  type Less = Omit<Own, "depths">;
  expectTypeOf<(scene: Scene) => Less>().not.toExtend<Plan<Less, Wire>>();
});
