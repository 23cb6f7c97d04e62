import { hasLensFilter } from "../light/lens-filter.js";
import type { Caution } from "../result/common.js";
import type { Scene } from "../scene/scene.js";
import type { CautionCode } from "./cautions-en.js";
import { caution } from "./say.js";

/** The usual cautions that a scene calls for. */
export function cautionsFor(scene: Scene, { filterAdvised = false } = {}): Caution[] {
  const codes: CautionCode[] = ["not_a_dive_planner"];
  if (scene.lamps.length > 0) codes.push("lamps_in_water_only", "lamps_not_into_eyes", "lamps_stay_on_rig");
  if (filterAdvised || hasLensFilter(scene)) {
    codes.push(scene.filter_change_underwater === "none" ? "filter_on_dry_land" : "filter_flip_practised");
  }
  return codes.map(caution);
}
