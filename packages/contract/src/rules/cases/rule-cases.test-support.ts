import type { Scene } from "../../scene/scene.js";

/** Scenes that a rule lets pass, and scenes that it refuses with the pointers of what it refuses. */
export interface Cases {
  passes: Scene[];
  refuses: [Scene, string[]][];
}

/** By the codes of the rules. */
export type RuleCases = Readonly<Record<string, Cases>>;
