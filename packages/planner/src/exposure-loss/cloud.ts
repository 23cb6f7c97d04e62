import type { Reason } from "../codes/coded.js";
import type { LightReasons } from "../codes/light.js";
import type { Conditions } from "../light/conditions.js";
import { daylightUnder } from "../light/daylight.js";
import { lensFilterOf } from "../light/lens-filter.js";
import { underwater } from "../light/underwater.js";
import { lightReason } from "../reasons/light-reason.js";
import { NOMINAL } from "../uncertainty/nuisance.js";
import { budgetAt } from "./budget.js";

/** Less than this is not told. */
const TOLD_FROM_STOPS = 0.1;

/** That cloud gives the subject more light than a clear sky would, where it does: it sends light to the side away from the sun. */
export function cloudReasons(
  conditions: Conditions,
  depth_m: number,
  ev100: number,
): Reason<Pick<LightReasons, "cloud_fills_shadow">>[] {
  const { scene, sun } = conditions;
  if (!sun || scene.cloud_oktas === 0) return [];
  const daylight = daylightUnder(sun, { ...scene, cloud_oktas: 0 });
  const clear = underwater({ ...conditions, daylight }, NOMINAL);
  const stops = ev100 - budgetAt(clear, lensFilterOf(scene, NOMINAL), depth_m).ev100;
  return stops < TOLD_FROM_STOPS ? [] : [lightReason("cloud_fills_shadow", "computed", { stops })];
}
