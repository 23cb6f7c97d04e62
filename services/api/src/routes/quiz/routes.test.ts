import Fastify, { type FastifyBaseLogger } from "fastify";
import { pino } from "pino";
import { expect, it } from "vitest";
import { Computing } from "../../compute/computing.js";
import { ComputePool } from "../../compute/pool.js";
import { Limiter } from "../../limiting/limiter.js";
import { defaultLimits } from "../../limits.js";
import { defaultQuizSettings, drawKeyring } from "../../quiz-settings.js";
import { quizRoutes } from "./routes.js";

/** No thread is started, as nothing is worked out. */
const pool = new ComputePool({
  threads: 1,
  niceness: 0,
  runningPerClient: 1,
  waitingPerClient: 1,
  waiting: 1,
});
const computing = new Computing(pool, new Limiter(defaultLimits), defaultLimits.handlerTimeout_ms);

/** What is logged while the routes of quizzes are made. */
function logged(settings: Partial<typeof defaultQuizSettings>): string[] {
  const lines: string[] = [];
  const logger: FastifyBaseLogger = pino({ base: null }, { write: (line: string) => void lines.push(line) });
  quizRoutes(Fastify({ loggerInstance: logger }), { ...defaultQuizSettings, ...settings }, computing);
  return lines.map((line) => JSON.parse(line).msg);
}

it("tells, by the name of the setting, that papers end with the process where it brings no key", () => {
  const [line, ...more] = logged({ keyring: undefined });
  expect(line).toContain("QUIZ_KEYS");
  expect(more).toEqual([]);
  expect(logged({ keyring: drawKeyring() })).toEqual([]);
});
