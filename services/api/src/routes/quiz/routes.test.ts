import Fastify, { type FastifyBaseLogger } from "fastify";
import { pino } from "pino";
import { expect, it } from "vitest";
import { defaultQuizSettings, drawKeyring } from "../../quiz-settings.js";
import { quizRoutes } from "./routes.js";

/** What is logged while the routes of quizzes are made. */
function logged(settings: Partial<typeof defaultQuizSettings>): string[] {
  const lines: string[] = [];
  const logger: FastifyBaseLogger = pino({ base: null }, { write: (line: string) => void lines.push(line) });
  quizRoutes(Fastify({ loggerInstance: logger }), { ...defaultQuizSettings, ...settings });
  return lines.map((line) => JSON.parse(line).msg);
}

it("tells, by the name of the setting, that papers end with the process where it brings no key", () => {
  const [line, ...more] = logged({ keyring: undefined });
  expect(line).toContain("QUIZ_KEYS");
  expect(more).toEqual([]);
  expect(logged({ keyring: drawKeyring() })).toEqual([]);
});
