/** Three people who film the same kind of reef and finish their pictures in three ways: by the name of an approved page. */

import { daylightScene } from "@sunfathom/fixtures/scenes";
import type { Scene } from "../../packages/planner/src/scene/scene.js";

const REEF = daylightScene("IB", 50, 5, 12);

/** A guest with a phone in a housing: everything on automatic, the picture sent as it is. */
export const PHONE_ON_AUTO: Scene = {
  ...REEF,
  camera_class: "phone",
  min_f_number: 1.8,
  max_f_number: 1.8,
  white_balance_max_cct_K: 8000,
  white_balance_max_duv: 0.02,
  white_balance_mode: "auto",
  exposure_mode: "auto",
  finish: "in_camera",
};

/** A student with a compact camera, a white slate and a red filter in the pocket. */
export const STUDENT_WITH_RED_FILTER: Scene = {
  ...REEF,
  camera_class: "compact",
  finish: "in_camera",
  kit: [{ id: "red-filter", item: "lens_filter", filter_kind: "red", filter_density: 0.9 }],
};

/** A colourist with a cinema camera, a chart that was filmed at depth and a profile made of it. */
export const COLOURIST_WITH_PROFILE: Scene = {
  ...REEF,
  camera_class: "cinema",
  bits: 12,
  recording_curve: "log",
  white_balance_min_cct_K: 2000,
  white_balance_max_cct_K: 15000,
  white_balance_max_duv: 0.05,
  finish: "matched",
};
