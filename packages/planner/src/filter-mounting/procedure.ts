import type { Coded } from "../codes/coded.js";
import type { MountingStepCode, MountingSteps } from "../codes/mounting-steps.js";
import type { FilterMountingScene } from "../scene/filter-mounting-scene.js";
import type { Judged } from "./judge.js";

/** What to do with the advised holder, in order. Common practice. */
export function procedureOf({ rear_fixing }: FilterMountingScene, advised: Judged): Coded<MountingSteps>[] {
  return stepsOf(advised, rear_fixing).map((code) => ({ code, parameters: {} }));
}

function stepsOf({ place, changes, rings }: Judged, fixing: "slot" | "tape"): MountingStepCode[] {
  const chained: MountingStepCode[] = rings && rings.chain.rings.length > 0 ? ["chain_assemble"] : [];
  switch (place) {
    case "behind_lens":
      return [
        "cut_practice",
        "cut_sheet",
        fixing === "slot" ? "slide_in" : "tape_on",
        "dry_land_only",
        "refocus",
        "sheet_set",
        "sheet_renew",
        ...(fixing === "tape" ? (["tape_renew"] as const) : []),
      ];
    case "on_lens":
      return [...chained, "wall_test", "clear_of_port", "dry_land_only"];
    case "before_port":
    case "before_window":
      return [
        ...chained,
        "wall_test",
        "tether",
        "no_grit",
        "no_bubbles",
        ...(changes === "none" ? [] : (["change_practised"] as const)),
        "rinse",
      ];
  }
}
