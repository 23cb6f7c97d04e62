import type { Nothing } from "./coded.js";

export type MountingStepCode =
  | "cut_practice"
  | "cut_sheet"
  | "slide_in"
  | "tape_on"
  | "refocus"
  | "sheet_set"
  | "sheet_renew"
  | "tape_renew"
  | "dry_land_only"
  | "chain_assemble"
  | "wall_test"
  | "clear_of_port"
  | "no_grit"
  | "no_bubbles"
  | "tether"
  | "change_practised"
  | "rinse";

/** What to do to mount a filter. */
export type MountingSteps = Record<MountingStepCode, Nothing>;
