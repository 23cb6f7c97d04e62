// Links of answers lead where they say, to pictures of the same scene.
import { describe, expect, it } from "vitest";
import { scenesAsSent } from "../../../../../test/support/scenes-as-sent.js";
import { queryFieldsOf, readQuery } from "../../http/asked/query.js";
import { operations } from "../../operations.js";
import { tongueOf } from "../../tongues.js";
import { sheetOperations } from "../sheets/index.js";
import { drawable } from "./draw.js";

interface Link {
  name: string;
  method: string;
  href: string;
}

const reef = scenesAsSent["reef_with_lamps"] ?? {};
const scenes: Record<string, object> = {
  ...scenesAsSent,
  lamp_fields: {
    water_type: "IB",
    depth_m: 12,
    lamp_flux_lm: 4000,
    lamp_distance_m: 0.8,
    lamp_led: "LED-B4",
  },
  two_kinds_of_lamps: {
    ...{ water_type: "IB", sun_elevation_deg: 50, depth_m: 12 },
    lamps: [
      { flux_lm: 4000, distance_m: 0.8 },
      { flux_lm: 900, distance_m: 1.2 },
    ],
  },
  place_and_time: {
    visibility_m: 25,
    water_hue: "blue",
    min_depth_m: 5,
    max_depth_m: 18,
    latitude_deg: -47.3,
    longitude_deg: -128.4,
    local_time: "2027-01-10T10:15",
    time_zone: "Etc/GMT+9",
    frame_rate_fps: 24,
    filter_kind: "red",
    filter_stops: 2,
    units: "imperial",
    language: "de",
  },
  log: { water_type: "II", depth_m: 10, recording_curve: "log", bits: 10, finish: "matched" },
  mounted: {
    ...{ water_type: "IB", depth_m: 12, port_kind: "flat", lens_kind: "wide", field_of_view_deg: 84 },
    ...{ port_thread_mm: 67, lens_interchangeable: false },
  },
  kit: {
    water_type: "IB",
    depth_m: 12,
    kit: [{ id: "r6", item: "lens_filter", filter_kind: "red", filter_density: 0.6 }],
  },
};
/** Those with lists; what a filter is mounted on comes with one of rings. */
const needsBody = new Set(["kit", "two_kinds_of_lamps", "mounted"]);
const { problems } = tongueOf("en");

const linksIn = (name: string, scene: object): Link[] => {
  const answered = operations.find((operation) => operation.name === name)?.reply(scene);
  if (answered?.status !== "ok") throw new Error(`${name} has no answer: ${JSON.stringify(answered)}`);
  return (answered.body as { links: Link[] }).links;
};
const formOf = (request: string, scene: object) => {
  const prepared = operations.find((operation) => operation.name === request)?.prepare(scene);
  if (prepared?.status !== "ready") throw new Error(JSON.stringify(prepared));
  return prepared.scene;
};

/** A scene as an answer tells it: nothing is left to assume. */
const toldWhole = operations
  .find(({ name }) => name === "attenuation")
  ?.reply({ water_type: "IB", depth_m: 12 });
if (toldWhole?.status !== "ok") throw new Error("no answer");
const { assumed: _, ...whole } = (toldWhole.body as { scene: { assumed: string[] } }).scene;
scenes["whole"] = whole;

/** Links follow from the scene alone: the cheapest calculation stands for all. */
const asked: [name: string, key: string][] = [
  ...Object.keys(scenes).map((key): [string, string] => ["attenuation", key]),
  ...operations
    .filter(({ request }) => request === "Scene")
    .map(({ name }): [string, string] => [name, "reef_with_lamps"]),
  ["dive-advice", "mounted"],
];

describe("links of an answer", () => {
  it.each(asked)("of %s lead to pictures of the same scene: %s", (name, key) => {
    const scene = scenes[key] ?? {};
    for (const link of linksIn(name, scene)) {
      const [path = "", query] = link.href.split("?");
      const picture = drawable.find((one) => one.path === path);
      if (picture === undefined) {
        expect(sheetOperations.map((sheet) => `/v1/${sheet.name}`)).toContain(path);
        expect(link).toEqual({ name: path.slice("/v1/".length), method: "POST", href: path });
        continue;
      }
      expect(link.name).toBe(picture.picture.name);
      expect(link.method).toBe(needsBody.has(key) ? "POST" : "GET");
      expect(query === undefined).toBe(link.method === "POST");
      if (query === undefined) continue;
      const { operation } = picture;
      const read = readQuery(query, queryFieldsOf(operation), problems.query);
      expect(read.errors).toEqual([]);
      expect(formOf(operation.name, read.scene)).toEqual(formOf(operation.name, scene));
    }
  });
});

describe("every picture", () => {
  it.each(drawable)("$path is linked by the calculation whose figures it shows, and by the plan", (drawn) => {
    for (const name of [drawn.operation.name, "dive-advice"]) {
      expect(linksIn(name, reef).map(({ href }) => href.split("?")[0])).toContain(drawn.path);
    }
  });

  it("is linked in few bytes, however much the scene says", () => {
    const { mounted = {} } = scenes;
    for (const scene of [reef, mounted])
      expect(JSON.stringify(linksIn("dive-advice", scene)).length).toBeLessThan(3_000);
  });
});
