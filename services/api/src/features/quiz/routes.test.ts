import Fastify, { type FastifyBaseLogger } from "fastify";
import { pino } from "pino";
import { expect, it } from "vitest";
import { Computing } from "../../compute/computing.js";
import { ComputePool } from "../../compute/pool.js";
import { defaultLimits } from "../../config/limits.js";
import { defaultQuizSettings, drawKeyring } from "../../config/quiz-settings.js";
import { AnswerCache } from "../../http/sent/answer-cache.js";
import { Limiter } from "../../limiting/limiter.js";
import { quiz } from "./routes.js";

/** No thread is started, as nothing is worked out. */
const pool = new ComputePool({
  threads: 1,
  niceness: 0,
  runningPerClient: 1,
  waitingPerClient: 1,
  waiting: 1,
});
const shared = {
  cache: new AnswerCache(0),
  computing: new Computing(pool, new Limiter(defaultLimits), defaultLimits.handlerTimeout_ms),
  limits: defaultLimits,
};

/** What is logged while the routes of quizzes are made. */
async function logged(settings: Partial<typeof defaultQuizSettings>): Promise<string[]> {
  const lines: string[] = [];
  const logger: FastifyBaseLogger = pino({ base: null }, { write: (line: string) => void lines.push(line) });
  await Fastify({ loggerInstance: logger }).register(quiz, {
    ...shared,
    quiz: { ...defaultQuizSettings, ...settings },
  });
  return lines.map((line) => JSON.parse(line).msg);
}

it("tells, by the name of the setting, that papers end with the process where it brings no key", async () => {
  const [line, ...more] = await logged({ keyring: undefined });
  expect(line).toContain("QUIZ_KEYS");
  expect(more).toEqual([]);
  expect(await logged({ keyring: drawKeyring() })).toEqual([]);
});
