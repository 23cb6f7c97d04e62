// Scenes that the long fuzz has found, once answered otherwise than described: strange, but right.
import type { FastifyInstance } from "fastify";
import { afterAll, beforeAll, expect, it } from "vitest";
import { ask, startApp } from "./ask.js";
import { calculations } from "./description.js";
import { timeout_ms } from "./runs.js";

let app: FastifyInstance;
beforeAll(async () => {
  app = await startApp();
});
afterAll(() => app.close());

const lamp = { flux_lm: 4000, distance_m: 0.8 };
/** Lets violet through and nothing else: what the lamps light is swallowed before it is seen. */
const violetWater = [
  { wavelength_nm: 380, kd_per_m: 0.005 },
  { wavelength_nm: 485, kd_per_m: 3.52 },
];

it.each([
  [
    "more light than any one neutral density of a filter choice was thought to hold back",
    "filter-choice",
    {
      water_type: "IB",
      depth_m: 10,
      min_iso: 409600,
      max_iso: 409600,
      lamps: [{ ...lamp, distance_m: 0.05 }],
    },
  ],
  [
    "a subject that receives more upright than lying",
    "exposure-loss",
    {
      kd_samples: [
        { wavelength_nm: 413.64986607997173, kd_per_m: 0.0884 },
        { wavelength_nm: 502, kd_per_m: 1.69 },
      ],
      cloud_oktas: 1,
      depth_m: 10,
    },
  ],
  [
    "a low sun in the subject's face",
    "exposure-loss",
    { water_type: "I", depth_m: 0.5, sun_elevation_deg: 10, subject_facing: "sun" },
  ],
  [
    "haze that outshines the subject a million times",
    "mixed-light",
    { kd_samples: violetWater, depth_m: 10, lamps: [lamp] },
  ],
  [
    "haze that outshines it more than numbers say",
    "dive-advice",
    {
      kd_samples: [
        { wavelength_nm: 380, kd_per_m: 0.005 },
        { wavelength_nm: 476, kd_per_m: 3.59 },
        { wavelength_nm: 495.93224949531606, kd_per_m: 15.27625155930727 },
      ],
      depth_m: 10,
      lamps: [lamp],
    },
  ],
  [
    "red that lamps may hold up far below any dive",
    "colour-recovery",
    { subject_facing: "sun", recording_curve: "linear", water_type: "IB", depth_m: 10, lamps: [lamp] },
  ],
])(
  "%s is answered as described",
  async (_, name, scene) => {
    const operation = calculations.find(({ post }) => post.path === `/v1/${name}`);
    if (operation === undefined) throw new Error(`There is no ${name}.`);
    const { status } = await ask(app, operation.post, { body: JSON.stringify(scene) });
    expect(status).toBe(200);
  },
  timeout_ms,
);
