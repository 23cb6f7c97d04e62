import type { quizTemplates } from "@sunfathom/contract";

/** A kind of question. */
export type QuizTemplateId = (typeof quizTemplates)[number];
