// A class from end to end through the client: a paper is drawn, answered, marked, and packed for a platform.

import { type createApp, defaultQuizSettings } from "@sunfathom/api";
import { unzipSync } from "fflate";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import {
  InvalidRequestError,
  KeysNotOfferedError,
  type QuizItem,
  type QuizResponse,
  Sunfathom,
  TokenRefusedError,
  UnauthorizedError,
} from "../../packages/sdk/src/index.js";
import { OfflineSunfathom } from "../../packages/sdk/src/offline/index.js";
import { buildApp } from "../../services/api/src/build-app.test-support.js";

const instructorKey = "a-key-of-these-tests-alone";

let app: Awaited<ReturnType<typeof createApp>>;
let baseUrl: string;
beforeAll(async () => {
  const quiz = { ...defaultQuizSettings, instructorKey };
  app = await buildApp({ quiz });
  baseUrl = await app.listen({ host: "127.0.0.1", port: 0 });
});
afterAll(() => app.close());

/** Some answer of the form that a question takes, as a learner gives one who guesses. */
function guess({ id, interaction, options = [], left = [], right = [] }: QuizItem): QuizResponse {
  const ids = options.map((option) => option.id);
  switch (interaction) {
    case "single_choice":
    case "multiple_choice":
      return { item: id, choices: ids.slice(0, 1) };
    case "numeric":
      return { item: id, number: 1 };
    case "ordering":
      return { item: id, order: ids };
    case "matching":
      return { item: id, pairs: left.map((entry, i) => ({ left: entry.id, right: right[i]?.id ?? "" })) };
  }
}

describe("a class, through the client", () => {
  it("gets a paper, answers it, and is told what is right and why", async () => {
    const client = new Sunfathom({ baseUrl });
    const paper = await client.quiz.drawItems({ level: "beginner", count: 24 });
    expect(new Set(paper.items.map(({ interaction }) => interaction)).size).toBeGreaterThan(3);
    const responses = paper.items.slice(1).map(guess);
    const marks = await client.quiz.markAnswers({ token: paper.token, responses });
    expect(marks.max_score).toBe(24);
    expect(marks.unanswered).toEqual(["q1"]);
    expect(marks.grades.map(({ item }) => item)).toEqual(responses.map(({ item }) => item));
    const sum = marks.grades.reduce((total, { score }) => total + score, 0);
    expect(marks.score).toBeCloseTo(sum, 3);
    expect(marks.score).toBeLessThan(24);
    for (const { feedback, solution } of marks.grades) {
      expect(feedback[0]?.text).toBeTruthy();
      expect(solution?.steps[0]).toBeTruthy();
    }
  });

  it("gets whole marks for single choices once every option was tried: one attempt is the platform's job", async () => {
    const client = new Sunfathom({ baseUrl });
    const templates = ["red_left" as const, "filter_for_water" as const];
    const { token, items } = await client.quiz.drawItems({ level: "working", count: 6, templates });
    const right: QuizResponse[] = [];
    for (const { id, options = [] } of items) {
      const tried = await Promise.all(
        options.map(async (option) => {
          const response = { item: id, choices: [option.id] };
          const { score } = await client.quiz.markAnswers({ token, responses: [response] });
          return { response, score };
        }),
      );
      expect(tried.map(({ score }) => score).sort()).toEqual([...options.slice(1).map(() => 0), 1]);
      right.push(...tried.filter(({ score }) => score === 1).map(({ response }) => response));
    }
    expect(await client.quiz.markAnswers({ token, responses: right })).toMatchObject({
      score: 6,
      max_score: 6,
    });
  });

  it("gets a package as bytes, with keys for who has the key", async () => {
    const asked = { level: "expert", count: 3, title: "Colour", with_keys: true, version: "2.1" } as const;
    const { data, meta } = await new Sunfathom({ baseUrl, apiKey: instructorKey }).quiz
      .packItems(asked)
      .withResponse();
    expect([...new Uint8Array(data).slice(0, 4)]).toEqual([0x50, 0x4b, 3, 4]);
    expect(meta).toMatchObject({ source: "service", requestId: expect.any(String) });
    const stranger = new Sunfathom({ baseUrl, apiKey: `${instructorKey}x` });
    await expect(stranger.quiz.packItems(asked)).rejects.toBeInstanceOf(UnauthorizedError);
  });

  it("gets a practice package, which has no release to keep", async () => {
    const client = new Sunfathom({ baseUrl, apiKey: instructorKey });
    const asked = {
      level: "beginner",
      count: 2,
      title: "Colour",
      format: "scorm_1_2",
      with_keys: true,
    } as const;
    const files = Object.keys(unzipSync(new Uint8Array(await client.quiz.packItems(asked))));
    expect(files).toEqual(expect.arrayContaining(["imsmanifest.xml", "index.html", "player.js"]));
    const late = { ...asked, release: "after_close", closes_at: "2999-01-01T00:00:00Z" } as const;
    await expect(client.quiz.packItems(late)).rejects.toBeInstanceOf(InvalidRequestError);
  });

  it("hears what is wrong as errors of their kinds", async () => {
    const client = new Sunfathom({ baseUrl });
    const wrong = { level: "captain", count: 3 } as unknown as Parameters<typeof client.quiz.drawItems>[0];
    await expect(client.quiz.drawItems(wrong)).rejects.toBeInstanceOf(InvalidRequestError);
    const refused = client.quiz.markAnswers({ token: "sq1", responses: [] });
    await expect(refused).rejects.toBeInstanceOf(TokenRefusedError);
    const without = await buildApp();
    const elsewhere = new Sunfathom({ baseUrl: await without.listen({ host: "127.0.0.1", port: 0 }) });
    const asked = { level: "expert", count: 1, title: "Colour", with_keys: true } as const;
    await expect(elsewhere.quiz.packItems(asked)).rejects.toBeInstanceOf(KeysNotOfferedError);
    await without.close();
  });

  it("needs a service: papers are sealed with its key", async () => {
    const offline = new OfflineSunfathom();
    await expect(offline.quiz.drawItems({ level: "beginner", count: 1 })).rejects.toMatchObject({
      name: "NotOfflineError",
    });
  });
});
