import { kitAdviceExamples } from "@sunfathom/contract";
import type { FastifyInstance } from "fastify";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { buildApp } from "../../build-app.test-support.js";

let app: FastifyInstance;
beforeAll(async () => {
  app = await buildApp();
  await app.ready();
});
afterAll(() => app.close());

const url = "/v1/kit-advice";
const week = kitAdviceExamples.a_week_of_dives.value;
const ported = kitAdviceExamples.rings_for_a_port.value;
const one = {
  dives: [{ id: "mole", scene: { water_type: "5C", depth_m: 8 } }],
  pieces: week.pieces.slice(0, 2),
};
const post = (payload: object, headers: Record<string, string> = {}) =>
  app.inject({ method: "POST", url, payload, headers });

describe("a kit for several dives", () => {
  it("comes with what each piece buys, the same by POST and QUERY, with a tag that saves the computing", async () => {
    const posted = await post(week);
    expect(posted.statusCode).toBe(200);
    const { take, dives, pieces, reasons, cautions, model } = posted.json();
    expect(dives.map(({ id }: { id: string }) => id)).toEqual([
      "gannet-reef",
      "lagoon",
      "mole",
      "wreck-by-night",
    ]);
    expect(pieces.map(({ id }: { id: string }) => id)).toEqual([...week.pieces.map(({ id }) => id)].sort());
    const taken = pieces.filter(({ role }: { role: string }) => role === "take");
    expect(taken.map(({ id }: { id: string }) => id)).toEqual(take);
    for (const { regret_delta_e00 } of dives) expect(regret_delta_e00.likely).toBeLessThan(1);
    expect(reasons.find(({ code }: { code: string }) => code === "kit_limit_judged").basis).toBe("judgement");
    expect(cautions[0].code).toBe("not_a_dive_planner");
    expect(model.sources.length).toBeGreaterThan(3);
    expect(dives[0].scene).toMatchObject({ camera_class: "action", min_depth_m: 5, max_depth_m: 18 });
    const known = await app.inject({
      method: "QUERY" as "POST",
      url,
      payload: week,
      headers: { "if-none-match": String(posted.headers["etag"]) },
    });
    expect(known.statusCode).toBe(304);
  });

  it("does not depend on the order of dives and pieces, nor on what is said for all", async () => {
    const turned = { ...ported, dives: [...ported.dives].reverse(), pieces: [...ported.pieces].reverse() };
    const each = {
      dives: ported.dives.map(({ id, scene }) => ({ id, scene: { ...ported.scene, ...scene } })),
      pieces: ported.pieces,
    };
    const [plain, other, own] = [await post(ported), await post(turned), await post(each)];
    expect(other.payload).toBe(plain.payload);
    expect(own.payload).toBe(plain.payload);
    expect(other.headers["etag"]).toBe(plain.headers["etag"]);
    expect(plain.json().take).toEqual(["red-67", "ring-52-67"]);
  });

  it.each(["de", "es", "fr"])("says the same figures in %s", async (language) => {
    const [english, other] = [(await post(one)).json(), (await post({ ...one, language })).json()];
    expect(other.dives).toEqual(english.dives);
    expect(other.pieces[0].reason.text).not.toBe(english.pieces[0].reason.text);
    expect(other.reasons.map(({ code }: { code: string }) => code)).toEqual(
      english.reasons.map(({ code }: { code: string }) => code),
    );
  });

  it("keeps the limit of its caller", async () => {
    const { take, reasons, regret_limit_delta_e00 } = (
      await post({ ...one, regret_limit_delta_e00: 20 })
    ).json();
    expect(regret_limit_delta_e00).toBe(20);
    expect(take).toEqual([]);
    expect(reasons.map(({ code }: { code: string }) => code)).toContain("kit_limit_given");
  });

  it("finds filters by their pictures as the scene of a dive does", async () => {
    const samples = [
      {
        red_without: 0.4,
        green_without: 0.5,
        blue_without: 0.45,
        red_with: 0.34,
        green_with: 0.15,
        blue_with: 0.12,
      },
    ];
    const scene = { water_type: "IB", depth_m: 12 };
    const pieces = [{ id: "f", item: "lens_filter", filter_samples: samples }];
    const kit = (await post({ dives: [{ id: "d", scene }], pieces })).json();
    const { ranking } = (
      await app.inject({ method: "POST", url: "/v1/filter-choice", payload: { ...scene, kit: pieces } })
    ).json();
    const wanted = ranking.find(({ filter_id }: { filter_id?: string }) => filter_id === "f");
    expect(kit.dives[0].colour_error_delta_e00.likely).toBe(wanted.colour_error_delta_e00.likely);
  });
});

const red = week.pieces[0];
const lamp = { id: "l", item: "lamp", flux_lm: 4000, distance_m: 0.8 };
describe("what is wrong is told by its place", () => {
  it.each<[string, object, number, string]>([
    ["no dives", { dives: [] }, 400, "/dives wrong_length"],
    [
      "too many dives",
      { dives: Array.from({ length: 13 }, (_, n) => ({ id: `${n}`, scene: {} })) },
      400,
      "/dives wrong_length",
    ],
    ["no pieces", { pieces: [] }, 400, "/pieces wrong_length"],
    [
      "too many pieces",
      { pieces: Array.from({ length: 25 }, (_, n) => ({ ...red, id: `${n}` })) },
      400,
      "/pieces wrong_length",
    ],
    ["a limit of nothing", { regret_limit_delta_e00: 0 }, 400, "/regret_limit_delta_e00 out_of_range"],
    [
      "a piece without a name",
      { pieces: [{ item: "ring", from_mm: 52, to_mm: 67, thickness_mm: 3 }] },
      400,
      "/pieces/0/id missing_field",
    ],
    ["a piece that is none", { pieces: [{ id: "x", item: "tripod" }] }, 400, "/pieces/0/item not_an_option"],
    ["two dives of one name", { dives: [...one.dives, ...one.dives] }, 400, "/dives/1/id dive_ids_unique"],
    ["two pieces of one name", { pieces: [red, red] }, 400, "/pieces/1/id piece_ids_unique"],
    [
      "lights in a dive",
      { dives: [{ id: "d", scene: { lamps: [] } }] },
      400,
      "/dives/0/scene/lamps kit_dive_field",
    ],
    ["a kit for all dives", { scene: { kit: [] } }, 400, "/scene/kit kit_dive_field"],
    [
      "a ring that filters",
      { pieces: [{ id: "r", item: "ring", from_mm: 52, to_mm: 67, thickness_mm: 3, filter_kind: "red" }] },
      400,
      "/pieces/0/filter_kind piece_field",
    ],
    [
      "a light without its distance",
      { pieces: [{ id: "l", item: "lamp", flux_lm: 4000 }] },
      400,
      "/pieces/0 piece_incomplete",
    ],
    [
      "a light of two colours",
      { pieces: [{ ...lamp, cct_K: 5000, led: "LED-B4" }] },
      400,
      "/pieces/0/led lamp_colour",
    ],
    [
      "a filter of no kind",
      { pieces: [red, { id: "f", item: "lens_filter" }] },
      400,
      "/pieces/1 kit_filters",
    ],
    [
      "a filter of half a kind",
      { pieces: [{ id: "f", item: "lens_filter", filter_kind: "red" }] },
      400,
      "/pieces/0/filter_kind kit_filters",
    ],
    [
      "a dive without water",
      { dives: [{ id: "d", scene: { depth_m: 5 } }] },
      400,
      "/dives/0/scene one_water_basis",
    ],
    [
      "a misspelt field of a dive",
      { dives: [{ id: "d", scene: { water_type: "IB", dept_m: 5 } }] },
      400,
      "/dives/0/scene/dept_m unknown_field",
    ],
    [
      "a misspelt field for all dives",
      { scene: { cloud_octas: 5 } },
      400,
      "/scene/cloud_octas unknown_field",
    ],
    [
      "no light by night",
      { dives: [{ id: "d", scene: { water_type: "IB", depth_m: 5, daylight_basis: "none" } }] },
      422,
      "/pieces no_light",
    ],
    [
      "a filter that nothing passes",
      {
        pieces: [
          { id: "a", item: "ring", from_mm: 52, to_mm: 67, thickness_mm: 3 },
          {
            id: "b",
            item: "lens_filter",
            filter_transmittance: [
              { wavelength_nm: 400, transmittance: 0 },
              { wavelength_nm: 700, transmittance: 0 },
            ],
          },
        ],
      },
      422,
      "/pieces/1/filter_transmittance filter_opaque",
    ],
    [
      "a lens that contradicts itself",
      {
        scene: {
          port_kind: "flat",
          lens_kind: "wide",
          lens_thread_mm: 52,
          focal_length_mm: 10,
          sensor_diagonal_mm: 40,
          field_of_view_deg: 30,
        },
      },
      422,
      "/scene/sensor_diagonal_mm lens_contradicts",
    ],
  ])("%s", async (_, change, status, told) => {
    const reply = await post({ ...one, ...change });
    const { errors = [] } = reply.json();
    expect(
      errors.map(({ pointer, code }: { pointer: string; code: string }) => `${pointer} ${code}`),
    ).toContain(told);
    expect(reply.statusCode).toBe(status);
    for (const { message, allowed } of errors) {
      expect(message).not.toBe("");
      expect(allowed).not.toBe("");
    }
  });

  it("a version of the model that is another one", async () => {
    expect((await post({ ...one, expect_model_version: "1999.1.1" })).statusCode).toBe(409);
  });

  it("a query, of which there is none", async () => {
    const reply = await app.inject({ method: "POST", url: `${url}?fields=take`, payload: one });
    expect(reply.json().code).toBe("invalid_query");
  });
});
