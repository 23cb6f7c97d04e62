import type { FastifyInstance } from "fastify";
import type { Computing } from "../../compute/computing.js";
import { drawKeyring, type QuizSettings } from "../../quiz-settings.js";
import { quizAnswersRoute } from "./answers.js";
import { quizItemsRoute } from "./items.js";
import { quizPackagesRoute } from "./packages.js";

/** Questions for courses: papers, their marks, and packages for learning platforms. */
export function quizRoutes(
  app: FastifyInstance,
  { keyring, tokenLifetime_s, instructorKey }: QuizSettings,
  computing: Computing,
): void {
  if (keyring === undefined) {
    app.log.info("QUIZ_KEYS is not set: papers are sealed with a key of this process, and end with it");
  }
  const sealing = { keyring: keyring ?? drawKeyring(), lifetime_s: tokenLifetime_s };
  quizItemsRoute(app, sealing, instructorKey, computing);
  quizAnswersRoute(app, sealing, instructorKey, computing);
  quizPackagesRoute(app, sealing, instructorKey, computing);
}
