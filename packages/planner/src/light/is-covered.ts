import type { Scene } from "../scene/scene.js";

/** Whether something cuts the sky that daylight still passes. */
export const isCovered = ({ overhead = "none" }: Scene): boolean =>
  overhead !== "none" && overhead !== "cave";
