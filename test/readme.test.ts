import { readFileSync } from "node:fs";
import { type createApp, defaultQuizSettings } from "@sunfathom/api";
import { calculationNames } from "@sunfathom/contract";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { buildApp } from "../services/api/src/build-app.test-support.js";

/** Every curl line of the README, run against the application as a reader would run it. */
const readme = readFileSync(new URL("../README.md", import.meta.url), "utf8");
const blocks = [...readme.matchAll(/```sh\n([\s\S]*?)```/g)].map(([, block]) => block);
const lines = blocks.flatMap((block) => block.split("\n")).filter((line) => line.startsWith("curl "));

/** What a reader has set `INSTRUCTOR_KEY` to. */
const instructorKey = "a-key-of-these-tests-alone";

interface Call {
  url: URL;
  body: string | undefined;
}

function parse(line: string): Call {
  const url = /http:\/\/127\.0\.0\.1:8080[^\s']*/.exec(line)?.[0];
  if (url === undefined) throw new Error(`no address in: ${line}`);
  return { url: new URL(url), body: / -d '([^']*)'/.exec(line)?.[1] };
}

let app: Awaited<ReturnType<typeof createApp>>;
beforeAll(async () => {
  // Not counted: this is about the README.
  app = await buildApp({ limits: { costPerWindow: 0 }, quiz: { ...defaultQuizSettings, instructorKey } });
});
afterAll(() => app.close());

async function run(line: string) {
  const { url, body } = parse(line);
  const path = url.pathname + url.search;
  const reply =
    body === undefined
      ? await app.inject({ method: "GET", url: path })
      : await app.inject({
          method: "POST",
          url: path,
          headers: {
            "content-type": "application/json",
            ...(line.includes("Bearer $INSTRUCTOR_KEY") ? { authorization: `Bearer ${instructorKey}` } : {}),
          },
          payload: body,
        });
  const isJson = /^application\/(problem\+)?json\b/.test(String(reply.headers["content-type"]));
  return { status: reply.statusCode, json: isJson ? reply.json() : undefined };
}

const lineWith = (part: string) => lines.find((line) => line.includes(part)) ?? "";

describe("the README", () => {
  it("names every calculation in its table, and no other", () => {
    const [, table = ""] = /^\| `GET` and `POST` under `\/v1`[^\n]*\n([\s\S]*?)\n\n/m.exec(readme) ?? [];
    const rows = [...table.matchAll(/^\| `([a-z-]+)`/gm)].map(([, name]) => name);
    expect(rows.sort()).toEqual([...calculationNames].sort());
  });

  it("has curl lines to run", () => expect(lines.length).toBeGreaterThanOrEqual(6));

  it.each(lines.filter((line) => !line.includes("sun_elevaton_deg")))("runs: %s", async (line) => {
    expect((await run(line)).status).toBe(200);
  });

  it("shows the answer to what is known on a boat as it is, shortened", async () => {
    const { json } = await run(lineWith("visibility_m=25"));
    const shown = JSON.parse(/```json\n([\s\S]*?)```/.exec(readme)?.[1] ?? "");
    const part = (value: unknown, like: unknown): unknown => {
      if (typeof like !== "object" || like === null) return value;
      const whole = value as Record<string, unknown>;
      return Object.fromEntries(Object.entries(like).map(([key, inner]) => [key, part(whole[key], inner)]));
    };
    expect(part(json, shown)).toEqual(shown);
  });

  it("shows the kit to take along as it is, shortened", async () => {
    const { json } = await run(lineWith("/v1/kit-advice"));
    const [, section = ""] = readme.split("## What to take along");
    const shown = JSON.parse(/```json\n([\s\S]*?)```/.exec(section)?.[1] ?? "");
    expect(json).toMatchObject(shown);
  });

  it("says no sentence twice", () => {
    const prose = readme.replace(/```[\s\S]*?```/g, "").replace(/^(\||#).*$/gm, "");
    const sentences = prose.split(/(?<=[.:?!])\s+/).map((sentence) => sentence.trim().replace(/^- /, ""));
    const long = sentences.filter((sentence) => sentence.length > 30);
    expect(long.length).toBeGreaterThan(40);
    expect(long.filter((sentence, nth) => long.indexOf(sentence) !== nth)).toEqual([]);
  });

  it("gives a label in 700 bytes, with its cautions", async () => {
    const { json } = await run(lineWith("fields=brief"));
    expect(JSON.stringify(json).length).toBeLessThan(700);
    expect(json.caution).toMatch(/\.$/);
    expect(json.caution_codes.length).toBeGreaterThan(0);
  });

  it("gives magenta on the harbour wall, no lens filter in the wreck, a fight on the reef with lamps", async () => {
    const harbour = await run(lineWith("water_type=3C"));
    expect(harbour.json.filter_kind).toBe("magenta");
    const wreck = await run(lineWith('"daylight_basis":"none"'));
    expect(wreck.json.balance_to).toBe("lamps");
    expect(wreck.json.depths[0].lamp_red_water_loss_stops.likely).toBeGreaterThan(0);
    const reef = await run(lineWith("lamp_flux_lm=4000"));
    expect(reef.json.depths[0].verdict).toBe("lights_fight");
    expect(reef.json.depths[0].ways_out.length).toBeGreaterThan(1);
  });

  it("names the misspelt field with the right one, and the empty one", async () => {
    const { status, json } = await run(lineWith("sun_elevaton_deg"));
    expect(status).toBe(400);
    expect(json.errors).toContainEqual(
      expect.objectContaining({ pointer: "/sun_elevaton_deg", did_you_mean: "sun_elevation_deg" }),
    );
    expect(json.errors).toContainEqual(expect.objectContaining({ pointer: "/depth_m", code: "empty_value" }));
  });

  it("gets ten questions without their answers, and a token", async () => {
    const { json } = await run(lineWith("/v1/quiz-items"));
    expect(json.items).toHaveLength(10);
    expect(json.token).toMatch(/^sq1\./);
    expect(lineWith("/v1/quiz-packages")).not.toBe("");
  });

  it("links only to files that exist", () => {
    const links = [...readme.matchAll(/\]\((?!http)([^)#]+)\)/g)].map(([, link]) => link);
    expect(links.length).toBeGreaterThan(3);
    for (const link of links)
      expect(() => readFileSync(new URL(`../${link}`, import.meta.url))).not.toThrow();
  });
});
