import type { FastifyPluginAsync } from "fastify";
import { drawKeyring, type QuizSettings } from "../../config/quiz-settings.js";
import type { Shared } from "../shared.js";
import { quizAnswersRoute } from "./answers.js";
import { quizItemsRoute } from "./items.js";
import { quizPackagesRoute } from "./packages.js";

/** Questions for courses: papers, their marks, and packages for learning platforms. */
export const quiz: FastifyPluginAsync<Shared & { quiz: QuizSettings }> = async (
  app,
  { quiz: { keyring, tokenLifetime_s, instructorKey }, computing },
) => {
  if (keyring === undefined) {
    app.log.info("QUIZ_KEYS is not set: papers are sealed with a key of this process, and end with it");
  }
  const sealing = { keyring: keyring ?? drawKeyring(), lifetime_s: tokenLifetime_s };
  quizItemsRoute(app, sealing, instructorKey, computing);
  quizAnswersRoute(app, sealing, instructorKey, computing);
  quizPackagesRoute(app, sealing, instructorKey, computing);
};
