import type { QuizAnswersRequest } from "./answers.js";
import type { QuizItemsRequest } from "./items.js";
import type { QuizPackageRequest } from "./package.js";

/** Papers to ask for. Every question of the first is a single choice. */
export const quizItemsExamples = {
  choices_for_a_class: {
    summary: "Four questions, each with one right option",
    value: { level: "working", count: 4, templates: ["red_left", "filter_for_water"] },
  },
  whole_job: {
    summary: "Twelve questions on all topics, feet behind metres",
    value: { level: "beginner", count: 12, units: "metric_and_imperial" },
  },
} as const satisfies Record<string, { summary: string; value: QuizItemsRequest }>;

/** The token is that of the paper that is answered. */
export const quizAnswersExamples = {
  first_question: {
    summary: "Option A of the first question",
    value: { token: "sq1.2026-05.bm9uY2Ugb2YgMTIg.c2VhbGVk", responses: [{ item: "q1", choices: ["A"] }] },
  },
} as const satisfies Record<string, { summary: string; value: QuizAnswersRequest }>;

export const quizPackageExamples = {
  for_learners: {
    summary: "Without keys, to talk through in class",
    value: { level: "beginner", count: 10, title: "Colour under water" },
  },
  for_an_older_platform: {
    summary: "QTI 2.1 with keys, for a platform that does the marking",
    value: {
      level: "expert",
      count: 10,
      title: "Filters and exposure",
      templates: ["densities_stack", "density_to_stops", "pay_with_iso", "exposure_way"],
      version: "2.1",
      with_keys: true,
    },
  },
  to_practise_on_a_boat: {
    summary: "SCORM 1.2, which marks on its own and needs no network",
    value: {
      level: "beginner",
      count: 10,
      title: "Colour under water",
      topics: ["light", "filter", "balance"],
      format: "scorm_1_2",
      with_keys: true,
    },
  },
} as const satisfies Record<string, { summary: string; value: QuizPackageRequest }>;
