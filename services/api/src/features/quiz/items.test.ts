import { CATALOGUES, type Item, itemsFor, LEVELS, openPaper } from "@sunfathom/quiz";
import { misconceptions } from "@sunfathom/words";
import type { FastifyInstance } from "fastify";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { buildApp } from "../../build-app.test-support.js";
import { keyring, post, quizSettings } from "./quiz.test-support.js";

let app: FastifyInstance;
beforeAll(async () => {
  app = await buildApp({ quiz: quizSettings });
  await app.ready();
});
afterAll(() => app.close());

const opened = async (token: string) => openPaper(token, { keyring, now_s: Date.now() / 1000 });

/** Texts of a question that only its key has. */
function secretsOf(item: Item): string[] {
  const wrong = "anticipated" in item ? item.anticipated.map(({ feedback }) => feedback) : [];
  const options = "options" in item ? item.options.map(({ feedback }) => feedback) : [];
  return [...item.solution.steps, ...item.solution.sources, ...wrong, ...options];
}

describe("a paper that is asked for", () => {
  it.each(LEVELS)("has as many questions of level %s as asked for, and none of their keys", async (level) => {
    const { text, body, headers } = await post(app, "items", { level, count: 60 }).expect(200);
    expect(body.items).toHaveLength(60);
    expect(headers["cache-control"]).toBe("no-store");
    const { items, request, model_version } = await opened(body.token);
    expect(body.model_version).toBe(model_version);
    expect(text).not.toContain(request.seed);
    for (const item of items) {
      for (const secret of secretsOf(item)) {
        // A short step may say no more than an option does.
        if (secret.length > 24) expect(text).not.toContain(JSON.stringify(secret).slice(1, -1));
      }
    }
    for (const id of misconceptions) expect(text).not.toContain(id);
    expect(text).not.toMatch(
      /"(value|right_order|pairs|accepted|anticipated|feedback|solution|misconception|given|seed)"/,
    );
    expect(text).not.toMatch(/"right":(true|false)/);
  });

  it("brings the cautions of what it is about, first that it is no dive plan", async () => {
    const asked = { level: "beginner", count: 2, templates: ["lamp_falloff", "pay_with_iso"] };
    const { body } = await post(app, "items", asked).expect(200);
    const lamps = ["lamps_in_water_only", "lamps_not_into_eyes", "lamps_stay_on_rig", "batteries_by_maker"];
    const codes = body.cautions.map(({ code }: { code: string }) => code);
    expect(codes).toEqual(["not_a_dive_planner", ...lamps]);
    for (const { text } of body.cautions) expect(text).toMatch(/^[A-Z].*\.$/);
    const marks = await post(app, "answers", { token: body.token, responses: [] }).expect(200);
    expect(marks.body.cautions).toEqual(body.cautions);
  });

  it("is another with each call, and its token another too", async () => {
    const draw = async () => (await post(app, "items", { level: "expert", count: 5 }).expect(200)).body;
    const [one, two] = [await draw(), await draw()];
    expect(one.items).not.toEqual(two.items);
    expect(one.token).not.toBe(two.token);
  });

  it("expires when it says", async () => {
    const before = Date.now();
    const { body } = await post(app, "items", { level: "expert", count: 1 }).expect(200);
    const lifetime_s = (Date.parse(body.expires) - before) / 1000;
    expect(lifetime_s).toBeGreaterThan(3598);
    expect(lifetime_s).toBeLessThan(3602);
  });

  it("keeps to the kinds, units and language asked for", async () => {
    const templates = ["density_match", "red_reach"];
    const asked = { level: "working", count: 6, templates, units: "metric_and_imperial", language: "en" };
    const { body } = await post(app, "items", asked).expect(200);
    expect(new Set(body.items.map(({ template }: { template: string }) => template))).toEqual(
      new Set(templates),
    );
    // Short lengths, which may be all that is drawn, have a decimal: 2.9 m (9.5 ft).
    expect(JSON.stringify(body.items)).toMatch(/\d m \(\d+(\.\d+)? ft\)/);
    expect(Object.keys(CATALOGUES)).toContain("en");
    const { items, request } = await opened(body.token);
    expect(items).toEqual(itemsFor(request));
    expect(body.items.map(({ stem }: { stem: string }) => stem)).toEqual(items.map(({ stem }) => stem));
  });

  it("may be of the largest size", async () => {
    const { body } = await post(app, "items", { level: "working", count: 200 }).expect(200);
    expect(body.items).toHaveLength(200);
  });
});

describe("a paper that cannot be", () => {
  it.each<[object, number, string, string, string]>([
    [{ level: "beginner" }, 400, "invalid_request", "/count", "missing_field"],
    [{ level: "beginner", count: 0 }, 400, "invalid_request", "/count", "out_of_range"],
    [{ level: "beginner", count: 201 }, 400, "invalid_request", "/count", "out_of_range"],
    [{ level: "beginner", count: 1.5 }, 400, "invalid_request", "/count", "not_whole"],
    [{ level: "Beginner", count: 1 }, 400, "invalid_request", "/level", "not_an_option"],
    [{ level: "beginner", count: 1, language: "de" }, 400, "invalid_request", "/language", "not_an_option"],
    [{ level: "beginner", count: 1, templates: [] }, 400, "invalid_request", "/templates", "wrong_length"],
    [
      { level: "beginner", count: 1, templates: ["red"] },
      400,
      "invalid_request",
      "/templates/0",
      "not_an_option",
    ],
    [
      { level: "beginner", count: 1, templates: ["red_reach", "mired_shift"] },
      422,
      "paper_not_possible",
      "/templates/1",
      "template_not_at_level",
    ],
    [
      { level: "beginner", count: 200, templates: ["order_of_dive"] },
      422,
      "paper_not_possible",
      "/count",
      "too_few_questions",
    ],
  ])("%j is refused with %i by place", async (asked, status, code, pointer, error) => {
    const { body } = await post(app, "items", asked).expect(status);
    expect(body).toMatchObject({ code, errors: [{ pointer, code: error }] });
  });

  it("is no question of another model", async () => {
    const asked = { level: "beginner", count: 1, expect_model_version: "1999.1.1" };
    expect((await post(app, "items", asked).expect(409)).body.code).toBe("model_version_mismatch");
  });
});
