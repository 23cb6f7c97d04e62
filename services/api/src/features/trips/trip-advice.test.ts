import { mostTrip, tripAdviceExamples } from "@sunfathom/contract";
import type { FastifyInstance } from "fastify";
import ICAL from "ical.js";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { buildApp } from "../../build-app.test-support.js";

let app: FastifyInstance;
beforeAll(async () => {
  app = await buildApp();
  await app.ready();
});
afterAll(() => app.close());

const url = "/v1/trip-advice";
const usual = tripAdviceExamples.two_guests_one_filter.value;
const [first] = usual.dives;
const [anyone] = usual.guests;
const one = { ...usual, dives: [first] };
const post = (payload: object, headers: Record<string, string> = {}) =>
  app.inject({ method: "POST", url, payload, headers });

interface Plan {
  guest_id: string;
  text: string;
  piece?: { piece_id: string };
}

describe("a trip", () => {
  it("has a plan for each guest on each dive, the same by POST and QUERY, with a tag that saves the computing", async () => {
    const posted = await post(usual);
    expect(posted.statusCode).toBe(200);
    const { dives, crates, packing, cautions, model } = posted.json();
    expect(dives.map(({ plans }: { plans: Plan[] }) => plans.map(({ guest_id }) => guest_id))).toEqual([
      ["g1", "g2", "g3"],
      ["g1", "g2", "g3"],
    ]);
    expect(crates).toHaveLength(3);
    expect(packing.pieces).toEqual([{ piece_id: "red-67", quantity: 1 }]);
    expect(cautions[0].code).toBe("not_a_dive_planner");
    expect(model.sources.length).toBeGreaterThan(3);
    const query = (headers: Record<string, string>) =>
      app.inject({ method: "QUERY" as "POST", url, payload: usual, headers });
    expect((await query({})).payload).toBe(posted.payload);
    const known = await query({ "if-none-match": String(posted.headers["etag"]) });
    expect(known.statusCode).toBe(304);
  });

  it("speaks to each guest in the guest's language, and to the shop in the answer's", async () => {
    const { dives, crates, reasons } = (await post({ ...one, language: "fr" })).json();
    const texts = dives[0].plans.map(({ text }: Plan) => text);
    expect(texts[0]).toMatch(/^(Nimm|Bring) /);
    expect(texts[1]).toMatch(/^(Montez|Ne montez) /);
    expect(crates.map(({ language }: { language: string }) => language)).toEqual(["de", "fr", "fr"]);
    expect(reasons[0].text).toContain("clients");
  });

  it("has the same figures in every language", async () => {
    const figures = async (language: string) => {
      const { dives } = (await post({ ...one, language })).json();
      return dives[0].plans.map(({ text: _, ...plan }: Plan) => plan);
    };
    const english = await figures("en");
    for (const language of ["de", "es", "fr"]) expect(await figures(language)).toEqual(english);
  });

  it("does not depend on the order of guests and pieces", async () => {
    const turned = { ...one, guests: [...one.guests].reverse(), shelf: [...one.shelf].reverse() };
    const [plain, other] = await Promise.all([post(one), post(turned)]);
    expect([...other.json().dives[0].plans].reverse()).toEqual(plain.json().dives[0].plans);
  });
});

describe("its calendar", () => {
  const calendar = { accept: "text/calendar" };
  const events = (text: string) =>
    new ICAL.Component(ICAL.parse(text)).getAllSubcomponents("vevent").map((event) => new ICAL.Event(event));

  it("comes by Accept: everybody's for the crew, one guest's in the guest's language", async () => {
    const crew = await post(usual, calendar);
    expect(crew.headers["content-type"]).toBe("text/calendar; charset=utf-8");
    expect(String(crew.headers["vary"])).toContain("Accept,");
    expect(crew.headers["content-disposition"]).toContain("trip-advice.ics");
    expect(events(crew.payload).map(({ summary }) => summary)).toEqual(["Gannet Stair", "Old Mole"]);
    expect(events(crew.payload)[0]?.description).toMatch(/g1: .*\ng2: .*\ng3: /);
    const guest = events((await post({ ...usual, calendar_for: "g1" }, calendar)).payload);
    expect(guest[0]?.description).toMatch(/^(Nimm|Bring) [\s\S]*Tauchplan/);
    expect(guest[0]?.summary).toMatch(/^Gannet Stair: /);
    expect(guest.map(({ duration }) => duration.toSeconds())).toEqual([3600, 3000]);
  });

  it("says what the answer says", async () => {
    const { dives } = (await post(usual)).json();
    const read = events((await post({ ...usual, calendar_for: "g2" }, calendar)).payload);
    for (const [d, { plans }] of dives.entries())
      expect(read[d]?.description.startsWith(plans[1].text)).toBe(true);
  });

  it.each([
    ["application/json", "application/json"],
    ["text/calendar;q=0.4, application/json", "application/json"],
    ["*/*", "application/json"],
    ["application/json;q=0.2, text/calendar", "text/calendar; charset=utf-8"],
    ["text/*", "text/calendar; charset=utf-8"],
  ])("%s gets %s", async (accept, type) => {
    expect((await post(one, { accept })).headers["content-type"]).toBe(type);
  });

  it("is told from the answer by its tag, and is nothing that light windows have", async () => {
    const [json, ics] = await Promise.all([post(one), post(one, calendar)]);
    expect(json.headers["etag"]).not.toBe(ics.headers["etag"]);
    const none = await app.inject({
      method: "POST",
      url: "/v1/light-windows",
      payload: {},
      headers: calendar,
    });
    expect(none.statusCode).toBe(406);
  });
});

describe("what is refused", () => {
  const [red] = usual.shelf;
  const many = <T>(count: number, of: (n: number) => T) => Array.from({ length: count }, (_, n) => of(n));
  const { camera: _, ...cameraless } = anyone;

  it.each<[string, object, number, string]>([
    ["a guest without a camera", { guests: [anyone, cameraless] }, 400, "/guests/1/camera missing_field"],
    ["nobody", { guests: [] }, 400, "/guests wrong_length"],
    ["no dives", { dives: [] }, 400, "/dives wrong_length"],
    [
      "too many guests",
      { guests: many(mostTrip.guests + 1, (n) => ({ ...anyone, id: `g${n}` })) },
      400,
      "/guests wrong_length",
    ],
    ["a shelf of zero quantity", { shelf: [{ ...red, quantity: 0 }] }, 400, "/shelf/0/quantity out_of_range"],
    ["no quantity", { shelf: [{ ...red, quantity: undefined }] }, 400, "/shelf/0/quantity missing_field"],
    [
      "a lamp on the shelf",
      { shelf: [{ id: "l", item: "lamp", quantity: 1 }] },
      400,
      "/shelf/0/item trip_shelf_filters",
    ],
    [
      "half a filter",
      { shelf: [{ id: "r", item: "lens_filter", filter_kind: "red", quantity: 1 }] },
      400,
      "/shelf/0/filter_kind kit_filters",
    ],
    ["two guests of one id", { guests: [anyone, anyone] }, 400, "/guests/1/id trip_ids_unique"],
    ["two pieces of one id", { shelf: [red, red] }, 400, "/shelf/1/id trip_ids_unique"],
    [
      "two own pieces of one id",
      {
        guests: [
          {
            ...anyone,
            kit: [
              { id: "l", item: "lamp" },
              { id: "l", item: "lamp" },
            ],
          },
        ],
      },
      400,
      "/guests/0/kit/1/id trip_ids_unique",
    ],
    [
      "a time within the scene",
      { dives: [{ ...first, scene: { ...first.scene, local_time: "2027-01-16T10:00" } }] },
      400,
      "/dives/0/scene/local_time trip_dive_field",
    ],
    [
      "a camera within the scene",
      { dives: [{ ...first, scene: { ...first.scene, min_iso: 100 } }] },
      400,
      "/dives/0/scene/min_iso trip_dive_field",
    ],
    [
      "a filter within the camera",
      { guests: [{ ...anyone, camera: { ...anyone.camera, filter_kind: "red" } }] },
      400,
      "/guests/0/camera/filter_kind trip_camera_field",
    ],
    [
      "no depth",
      { dives: [{ ...first, scene: { visibility_m: 20, water_hue: "blue" } }] },
      400,
      "/dives/0/scene one_depth",
    ],
    [
      "a misspelt field of a scene",
      { dives: [{ ...first, scene: { ...first.scene, max_dept_m: 3 } }] },
      400,
      "/dives/0/scene/max_dept_m unknown_field",
    ],
    [
      "a misspelt field of a camera",
      { guests: [{ ...anyone, camera: { camera_clas: "phone" } }] },
      400,
      "/guests/0/camera/camera_clas unknown_field",
    ],
    [
      "a port without a lens",
      { guests: [{ ...anyone, camera: { port_kind: "flat" } }] },
      400,
      "/guests/0/camera/port_kind mounting_kinds",
    ],
    [
      "half a place",
      { dives: [{ ...first, scene: { ...first.scene, longitude_deg: undefined } }] },
      400,
      "/dives/0/scene/longitude_deg place_and_time_whole",
    ],
    ["a calendar for a stranger", { calendar_for: "nobody" }, 400, "/calendar_for trip_guest_known"],
    [
      "an hour that a clock change skips",
      { dives: [{ ...first, local_time: "2026-03-29T02:30", time_zone: "Europe/Rome" }] },
      422,
      "/dives/0/local_time local_time_skipped",
    ],
    [
      "a zone that nobody knows",
      { dives: [{ ...first, time_zone: "Mars/Olympus" }] },
      422,
      "/dives/0/time_zone time_zone_unknown",
    ],
    [
      "a day that there is not, without a place",
      { dives: [{ ...first, local_time: "2027-02-31T09:00", scene: { water_type: "IB", depth_m: 9 } }] },
      422,
      "/dives/0/local_time local_time_malformed",
    ],
    [
      "a sun that stands too low",
      { dives: [{ ...first, local_time: "2027-01-16T20:00" }] },
      422,
      "/dives/0/local_time sun_too_low",
    ],
    [
      "a lens that contradicts itself",
      {
        guests: [
          {
            ...anyone,
            camera: {
              port_kind: "flat",
              lens_kind: "wide",
              field_of_view_deg: 90,
              focal_length_mm: 20,
              sensor_diagonal_mm: 5,
            },
          },
        ],
      },
      422,
      "/guests/0/camera/sensor_diagonal_mm lens_contradicts",
    ],
  ])("%s", async (_, change, status, told) => {
    const reply = await post({ ...one, ...change });
    const { errors = [] } = reply.json();
    expect(
      errors.map(({ pointer, code }: { pointer: string; code: string }) => `${pointer} ${code}`),
    ).toContain(told);
    expect(reply.statusCode).toBe(status);
    for (const { message, allowed } of errors) expect([message, allowed]).not.toContain("");
  });

  it("more than one answer takes, by what is allowed", async () => {
    const dives = many(mostTrip.dives, (n) => ({ ...first, id: `d${n}` }));
    const guests = many(mostTrip.guests, (n) => ({ id: `g${n}`, camera: { min_iso: 100 + n } }));
    const shelf = many(20, (n) => ({ ...red, id: `r${n}`, filter_density: 0.1 + n / 100 }));
    const reply = await post({ ...usual, dives, guests, shelf });
    expect(reply.statusCode).toBe(400);
    const [error] = reply.json().errors;
    expect(error).toMatchObject({
      pointer: "/dives",
      code: "trip_size",
      parameters: { judged: 31 * 40 * 21 },
    });
    expect(error.allowed).toContain("5000");
  });

  it("a version of the model that is another one", async () => {
    expect((await post({ ...one, expect_model_version: "1999.1.1" })).statusCode).toBe(409);
  });
});
