import {
  type Item,
  itemsFor,
  type Keyring,
  type PaperRequest,
  type Response,
  sealPaper,
} from "@sunfathom/quiz";
import type { FastifyInstance } from "fastify";
import request from "supertest";
import type { QuizSettings } from "../../config/quiz-settings.js";

const bytes = (value: number) => new Uint8Array(32).fill(value);
export const keyring: Keyring = { current: "now", keys: { now: bytes(7), before: bytes(8) } };
export const instructorKey = "a-key-of-these-tests-alone";
export const quizSettings: QuizSettings = { keyring, tokenLifetime_s: 3600, instructorKey };

export const paperRequest: PaperRequest = {
  seed: "tests",
  level: "beginner",
  count: 24,
  units: "metric",
  language: "en",
};

interface TokenOptions {
  ring?: Keyring;
  ago_s?: number;
  lifetime_s?: number;
  open_s?: number;
}

/** A token of that paper, sealed here and now unless told otherwise; with `open_s`, of one that closes so much later. */
export async function tokenFor(
  items: readonly Item[] = itemsFor(paperRequest),
  { ring = keyring, ago_s = 0, lifetime_s = 3600, open_s }: TokenOptions = {},
): Promise<string> {
  const now_s = Date.now() / 1000 - ago_s;
  const closes_s = open_s === undefined ? undefined : now_s + open_s;
  const sealing = { keyring: ring, now_s, lifetime_s, closes_s };
  const { token } = await sealPaper({ request: paperRequest, items }, sealing);
  return token;
}

export const post = (
  app: FastifyInstance,
  name: string,
  body: object,
  headers: Record<string, string> = {},
) => request(app.server).post(`/v1/quiz-${name}`).set(headers).send(body);

/** The whole right answer to a question. */
export function rightAnswer(item: Item): Response {
  switch (item.interaction) {
    case "single_choice":
    case "multiple_choice":
      return { choices: item.options.filter(({ right }) => right).map(({ id }) => id) };
    case "numeric":
      return { number: item.value };
    case "ordering":
      return { order: item.right_order };
    case "matching":
      return { pairs: item.pairs };
  }
}

/** An answer in which nothing is right. */
export function wrongAnswer(item: Item): Response {
  switch (item.interaction) {
    case "single_choice":
      return {
        choices: item.options
          .filter(({ right }) => !right)
          .slice(0, 1)
          .map(({ id }) => id),
      };
    case "multiple_choice":
      return { choices: item.options.filter(({ right }) => !right).map(({ id }) => id) };
    case "numeric":
      return { number: item.accepted.high + 1000 };
    case "ordering":
      return { order: [...item.right_order].reverse() };
    case "matching":
      return {
        pairs: item.pairs.map(({ left }, i) => ({
          left,
          right: item.pairs[(i + 1) % item.pairs.length]?.right ?? "",
        })),
      };
  }
}
