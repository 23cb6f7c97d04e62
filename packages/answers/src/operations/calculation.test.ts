import { expectTypeOf, it } from "vitest";
import type { Saying } from "./calculation.js";

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
  expectTypeOf<(planned: object) => Own>().toExtend<Saying<Own, Wire>>();
  type More = Own & { depths: { depth_m: number; duv?: number }[] };
  expectTypeOf<(planned: object) => More>().not.toExtend<Saying<More, Wire>>();
  expectTypeOf<Saying<More, Wire>>().toEqualTypeOf<{ notInTheContract: "duv" }>();
  type Less = Omit<Own, "depths">;
  expectTypeOf<(planned: object) => Less>().not.toExtend<Saying<Less, Wire>>();
});
