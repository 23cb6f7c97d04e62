/** The scenes that the service must answer, as a caller sends them. */
import { sceneExamples } from "../../packages/contract/src/index.js";
import type { Scene } from "../../packages/sdk/src/index.js";

const { min_iso, min_f_number, max_f_number, shutter_s } = sceneExamples.outer_reef_morning.scene;
const camera = { min_iso, max_iso: 3200, min_f_number, max_f_number, shutter_s };

export const scenesAsSent: Record<string, Scene> = {
  outer_reef_morning: sceneExamples.outer_reef_morning.scene,
  harbour_wall_afternoon: sceneExamples.harbour_wall_afternoon.scene,
  night_wreck: sceneExamples.night_wreck.scene,
  reef_with_lamps: sceneExamples.reef_with_lamps.scene,
  reef_in_the_shallows: { water_type: "IB", sun_elevation_deg: 40, depth_m: 1.5, ...camera },
  dark_and_green: { water_type: "5C", sun_elevation_deg: 15, depth_m: 14, ...camera, max_iso: 800 },
};
