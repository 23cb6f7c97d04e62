import {
  type ComponentName,
  type ProblemCode,
  quizAnswersExamples,
  quizItemsExamples,
  quizPackageExamples,
  reference,
} from "@sunfathom/contract";
import { schemaOf } from "../../openapi/components.js";
import { commonHeaders, type Header, languageHeaders, problemResponses } from "../../openapi/responses.js";

const tags = ["Quiz"];

const notKept: Record<string, Header> = {
  ...commonHeaders,
  "Cache-Control": { type: "string", description: "Not to be cached." },
};

/** Marks are in the language of their paper, whatever the request likes best. */
const paperLanguage: Record<string, Header> = {
  "Content-Language": { type: "string", description: "Language of the texts: that of the paper." },
};

/** The name under which packages with keys ask for the instructor's key. */
export const instructorScheme = "instructorKey";

const everyPost: readonly ProblemCode[] = [
  "invalid_request",
  "invalid_query",
  "malformed_json",
  "body_too_large",
  "unsupported_media_type",
];

/** What the description says of asking for a paper. */
export const drawItems = {
  operationId: "drawItems",
  tags,
  summary: "Draw a paper of questions, without their answers",
  description:
    "Questions on light and colour under water: every figure computed, no two alike, a new paper with each call. They come with a token, encrypted and authenticated, to have the answers marked until it expires. Nothing is stored. They are in English (`en`) or Spanish (`es`): `language`, or what `Accept-Language` likes best of the two, or English, as `Content-Language` says; the same seed asks the same in each. `avoid` leaves out questions that learners have met, by their `fingerprint`, and with the instructor's key a `seed` gives the same paper again. A paper is for practice unless `release` says `after_close`: then its token reveals nothing before `closes_at`.",
  "x-safe": false,
  security: [{ [instructorScheme]: [] }, {}],
  body: body("QuizItemsRequest", quizItemsExamples),
  response: {
    200: answer("QuizPaper", languageHeaders),
    ...problemResponses([
      ...everyPost,
      "unauthorized",
      "keys_not_offered",
      "model_version_mismatch",
      "paper_not_possible",
    ]),
  },
};

/** What the description says of marking. */
export const markAnswers = {
  operationId: "markAnswers",
  tags,
  summary: "Mark the answers to a paper",
  description:
    "Marks the answers, with feedback on each misunderstanding and the worked solution, in the language that the paper was drawn in; blanks and questions left out score 0 and get no solution. The token holds the right answers, so you can have the same answers marked as often as you like until it expires. For a practice paper (`release` `at_once`) that gives the whole key to anyone who holds its token and asks again and again. A paper with `release` `after_close` is marked from `closes_at` on; before that, `marks_held_back` says that the answers fit and nothing else, not even a score, from which repeated calls could work out the key. The instructor's key has it marked at any time, blanks with their solutions. To give each learner one attempt is the platform's job.",
  "x-safe": true,
  security: [{ [instructorScheme]: [] }, {}],
  body: body("QuizAnswersRequest", quizAnswersExamples),
  response: {
    200: answer("QuizMarks", paperLanguage),
    ...problemResponses([
      ...everyPost,
      "unauthorized",
      "marks_held_back",
      "questions_changed",
      "responses_do_not_fit",
      "token_refused",
      "token_expired",
    ]),
  },
};

/** The token of a paper is what marking takes: in words of the description, for programs to follow. */
export const linkToMarking = {
  200: {
    markAnswers: {
      operationId: "markAnswers",
      description: "The token gets the paper's answers marked.",
      requestBody: { token: "$response.body#/token" },
    },
  },
};

/** What the description says of packing a paper. */
export const packItems = {
  operationId: "packItems",
  tags,
  summary: "Pack a paper for a learning platform",
  description:
    "A content package of QTI 3.0 or 2.1 or, with `format` `scorm_1_2`, a practice package. QTI has a manifest, a test, and a file for each question and each picture. Cautions stand before the questions. `language` is chosen as for `/v1/quiz-items`, and said in each file of the package (`xml:lang`). With keys, feedback and solutions a platform does the marking; this needs the instructor's key. Without them, and with `release` `after_close`, `paper.json` in the package has the token that `/v1/quiz-answers` takes from `closes_at` on. A practice paper without keys has no token: learners hold the package, and it would open the solutions to them. A new paper with each call, except with an instructor's `seed`, which gives the same paper as in `/v1/quiz-items`. A SCORM 1.2 package holds a page that shows the questions, marks them on its own as `/v1/quiz-answers` does, explains each answer, and reports progress and score; it fetches nothing, and works without a platform, too. Its keys are inside, where anyone can read them: it is for practice alone, says so on its first page, and cannot be had of a paper with `release` or `closes_at`. It was checked with the open-source run-time scorm-again.",
  "x-safe": false,
  security: [{ [instructorScheme]: [] }, {}],
  body: body("QuizPackageRequest", quizPackageExamples),
  response: {
    200: {
      description: "A zip, sent as it is made.",
      headers: {
        ...notKept,
        ...languageHeaders,
        "Content-Disposition": { type: "string", description: "A name to save it under." },
      },
      content: {
        "application/zip": { schema: { type: "string", format: "binary", description: "The package." } },
      },
    },
    ...problemResponses([
      ...everyPost,
      "unauthorized",
      "keys_not_offered",
      "model_version_mismatch",
      "paper_not_possible",
    ]),
  },
};

function body(
  component: ComponentName,
  examples: Readonly<Record<string, { summary: string; value: object }>>,
): object {
  const schema = { allOf: [{ $ref: reference(component) }], "x-examples": examples };
  return { content: { "application/json": { schema } } };
}

function answer(component: ComponentName, inLanguage: Record<string, Header>): object {
  return {
    description: schemaOf(component).description,
    headers: { ...notKept, ...inLanguage },
    content: { "application/json": { schema: { $ref: reference(component) } } },
  };
}
