// Scenes that the long fuzz has found, once answered otherwise than described: strange, but right.
import type { FastifyInstance } from "fastify";
import { afterAll, beforeAll, expect, it } from "vitest";
import { ask, type Problem, startApp } from "./ask.js";
import { calculations } from "./description.js";
import { timeout_ms } from "./runs.js";

let app: FastifyInstance;
beforeAll(async () => {
  app = await startApp();
});
afterAll(() => app.close());

const kd = (...points: [number, number][]) =>
  points.map(([wavelength_nm, kd_per_m]) => ({ wavelength_nm, kd_per_m }));
const curve = (...points: [number, number][]) =>
  points.map(([wavelength_nm, transmittance]) => ({ wavelength_nm, transmittance }));

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
    "filters of a kit that take nothing of the one colour that is left",
    "filter-choice",
    {
      kd_samples: kd([380, 0.005], [482, 0.005], [500, 20], [540, 0.005]),
      depth_m: 10,
      kit: [
        {
          id: "edge",
          item: "lens_filter",
          filter_transmittance: curve([544, 0], [549, 0], [551, 1]),
        },
        {
          id: "slope",
          item: "lens_filter",
          filter_transmittance: curve([511, 1e-9], [515, 1e-9], [760, 1]),
        },
      ],
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
  [
    "colours that can hardly be told apart, with a wide spread",
    "filter-choice",
    {
      kd_samples: [
        { wavelength_nm: 384, kd_per_m: 0.005 },
        { wavelength_nm: 503, kd_per_m: 9.75 },
        { wavelength_nm: 575, kd_per_m: 0.005 },
      ],
      depth_m: 10,
      lamps: [{ ...lamp, distance_m: 0.05 }],
    },
  ],
  [
    "a filter that lets no red pass",
    "colour-recovery",
    {
      water_type: "IB",
      depth_m: 10,
      filter_transmittance: [
        { wavelength_nm: 500, transmittance: 0.9 },
        { wavelength_nm: 590, transmittance: 0 },
      ],
    },
  ],
  [
    "a camera in water whose light comes from nearly straight above",
    "exposure-loss",
    { kd_samples: kd([554, 0.005], [565, 17]), depth_m: 0.1 },
  ],
  [
    "a filter that a far weaker lamp alone has to itself",
    "exposure-loss",
    {
      water_type: "III",
      depth_m: 0.1,
      filter_kind: "magenta",
      filter_density: 0.06,
      lamps: [
        { flux_lm: 200_000, count: 2, distance_m: 20, filter_kind: "green", filter_density: 0.05 },
        { flux_lm: 38, distance_m: 3 },
      ],
    },
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

/** Lets one narrow band of green through. */
const greenWater = kd([521, 20], [529, 0.005], [672, 20]);

it.each([
  [
    "a picture of water in which less red is left than a number can say",
    "pictures/light-with-depth",
    { kd_samples: kd([380, 0.005], [780, 20]), daylight_basis: "none", depth_m: 93 },
  ],
  [
    "a grade that is tried at a depth where all that it was made for is burnt out or black",
    "grades",
    { kd_samples: greenWater, depth_m: 12, finish: "matched" },
  ],
])(
  "%s is made as described",
  async (_, name, scene) => {
    const operation = calculations.find(({ post }) => post.path === `/v1/${name}`);
    if (operation === undefined) throw new Error(`There is no ${name}.`);
    const { status } = await ask(app, operation.post, { body: JSON.stringify(scene) });
    expect(status).toBe(200);
  },
  timeout_ms,
);

it.each(calculations.filter(({ post }) => post.bodyName === "Scene").map(({ post }) => post))(
  "$path refuses a filter that lets nothing pass that a camera sees, or answers without it",
  async (post) => {
    const filter_transmittance = [
      { wavelength_nm: 380, transmittance: 0.11 },
      { wavelength_nm: 381, transmittance: 0 },
    ];
    const { status, body } = await ask(app, post, {
      body: JSON.stringify({ water_type: "IB", depth_m: 10, filter_transmittance }),
    });
    expect([200, 422]).toContain(status);
    if (status === 422)
      expect((body as Problem).errors?.map(({ pointer }) => pointer)).toEqual(["/filter_transmittance"]);
  },
  timeout_ms,
);

const farRed = [
  { id: "b", item: "lens_filter", filter_kind: "red", filter_density: 0.6 },
  { id: "a", item: "lens_filter", filter_transmittance: curve([736, 0], [745, 0.28], [766, 0.97]) },
];

it.each([
  [
    "a filter of the kit that passes only what no camera sees",
    "filter-choice",
    "/kit/1/filter_transmittance",
    { kit: farRed },
  ],
  ["the same for a dive", "dive-advice", "/kit/1/filter_transmittance", { kit: farRed }],
  [
    "a filter for light that the water has taken already",
    "white-balance",
    "/filter_transmittance",
    {
      kd_samples: kd([644, 20], [671, 0.1]),
      depth_m: 100,
      filter_transmittance: curve([398, 0.5], [524, 0]),
    },
  ],
  [
    "a balance of colours of which one may not be there",
    "white-balance",
    "/max_depth_m",
    { kd_samples: kd([549, 20], [554, 0.02], [566, 0.02], [571, 20]), min_depth_m: 80, max_depth_m: 80 },
  ],
])(
  "%s is refused by its field",
  async (_, name, pointer, fields) => {
    const operation = calculations.find(({ post }) => post.path === `/v1/${name}`);
    if (operation === undefined) throw new Error(`There is no ${name}.`);
    const water = "kd_samples" in fields ? {} : { water_type: "II", depth_m: 10 };
    const { status, body } = await ask(app, operation.post, {
      body: JSON.stringify({ ...water, ...fields }),
    });
    expect(status).toBe(422);
    const { code, errors } = body as Problem;
    expect(code).toBe("outside_the_model");
    expect(errors?.map((error) => error.pointer)).toEqual([pointer]);
  },
  timeout_ms,
);

it.each(calculations.map(({ post }) => post))(
  "$path says what is wrong with a list of another type behind fifty errors",
  async (post) => {
    const strangers = Object.fromEntries(Array.from({ length: 51 }, (_, nth) => [`z${nth}`, 0]));
    const { status } = await ask(app, post, { body: JSON.stringify({ ...strangers, kit: {}, rings: 7 }) });
    expect(status).toBe(400);
  },
  timeout_ms,
);
