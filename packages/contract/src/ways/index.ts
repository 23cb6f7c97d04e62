import { mountingWays } from "./mounting.js";
import { cardSampleWays, kitItemWays, lampWays } from "./parts.js";
import { sceneWays } from "./scene.js";
import type { Ways } from "./way.js";

/** By component of the wire, what it gives in one of several ways. */
export const waysOf = {
  Scene: sceneWays,
  Lamp: lampWays,
  KitItem: kitItemWays,
  CardSample: cardSampleWays,
  MountingScene: mountingWays,
} as const satisfies Record<string, readonly Ways[]>;
