import { integrateProduct, Y_BAR } from "@sunfathom/optics";
import type { Scene, TransmittanceSample } from "../scene/scene.js";
import { SceneProblem } from "../scene/scene-problem.js";
import { curveOfKit } from "./curve-of-kit.js";
import { measuredCurve } from "./measured-curve.js";

/** Least luminous transmittance of a filter that lets something be seen: 23 stops. */
const OPAQUE_BELOW = 1e-7;

/** @throws SceneProblem where a filter on the lens or in the kit lets too little through to be filmed through. */
export function requireClear({ filter_transmittance, kit }: Scene): void {
  const opaque = (curve: readonly TransmittanceSample[]): boolean => {
    const transmittance = measuredCurve(curve);
    const total = integrateProduct(
      transmittance.map(() => 1),
      Y_BAR,
    );
    return integrateProduct(transmittance, Y_BAR) / total < OPAQUE_BELOW;
  };
  if (filter_transmittance && opaque(filter_transmittance)) {
    throw new SceneProblem({ code: "filter_opaque", parameters: { case: "lens" } }, "filter_transmittance");
  }
  for (const [index, item] of (kit ?? []).entries()) {
    if (item.filter_transmittance && opaque(item.filter_transmittance))
      throw new SceneProblem({ code: "filter_opaque", parameters: { case: "kit" } }, ...curveOfKit(index));
  }
}
