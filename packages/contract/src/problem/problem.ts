import { z } from "zod/v3";
import { batchRuleCodes } from "../batch/rules.js";
import { annotate } from "../field/annotation.js";
import { list, text } from "../field/choice.js";
import { quizErrorCodes } from "../quiz/error-codes.js";
import { ownSceneRules as sceneRules } from "../rules/all-with-mounting.js";
import { mountingRules } from "../rules/mounting.js";
import { tripRuleCodes } from "../trip/rules.js";
import { type ProblemCode, problemCodes, problemStatuses } from "./catalogue.js";
import { problemComponent } from "./component-name.js";
import { fieldErrorCodes, maxErrors } from "./error-codes.js";
import { outsideCodes } from "./outside-codes.js";
import { problemType } from "./scene-problems.js";

/** Every code that an error can carry. */
const errorCodes: readonly string[] = [
  ...fieldErrorCodes,
  ...[...sceneRules, ...mountingRules].map(({ code }) => code),
  ...batchRuleCodes,
  ...tripRuleCodes,
  ...Object.values(quizErrorCodes).flat(),
  ...outsideCodes,
];

export const FieldError = z
  .object({
    pointer: text({
      description:
        "JSON pointer (RFC 6901) to the fault; empty for the body as a whole. For a query string, `/` and the name.",
      example: "/dept_m",
    }),
    code: annotate(
      z
        .string()
        .describe(
          "Stable code, for programs and translations. The examples are all the codes of today, and more may come; the page behind `type` says what each means.",
        ),
      { examples: errorCodes },
    ),
    message: text({ description: "What is wrong.", example: "There is no field dept_m." }),
    allowed: text({ description: "What is allowed there.", example: "depth_m" }),
    did_you_mean: text({
      description: "The nearest right name, if one is near.",
      example: "depth_m",
    }).optional(),
    parameters: annotate(
      z.object({}).describe("The numbers and names that go with the code. Which ones depends on the code."),
      { examples: [{ name: "dept_m" }] },
    ).optional(),
  })
  .describe("What is wrong with one field.");
export type FieldError = z.infer<typeof FieldError>;

const exampleErrors: FieldError[] = [
  {
    pointer: "/dept_m",
    code: "unknown_field",
    message: "There is no field dept_m.",
    allowed: "depth_m",
    did_you_mean: "depth_m",
  },
];

/** Problems that carry `errors`. */
const withErrors: readonly ProblemCode[] = [
  "invalid_scene",
  "invalid_request",
  "invalid_query",
  "outside_the_model",
  "questions_changed",
  "paper_not_possible",
  "responses_do_not_fit",
  "token_refused",
  "marks_held_back",
  "token_expired",
];

function constant<T extends string | number>(value: T, description: string) {
  return annotate(z.literal(value).describe(description), { examples: [value] });
}

function problem(code: ProblemCode) {
  const errors = list(FieldError, {
    description: `Everything that is wrong, up to ${maxErrors} errors; \`detail\` says if there are more.`,
    example: exampleErrors,
    minItems: 1,
    maxItems: maxErrors,
  });
  return z
    .object({
      type: constant(problemType(code), "The kind of problem, as a reference to a page that explains it."),
      title: text({
        description: "The kind of problem in a sentence, in the language that was asked for.",
        example: code,
      }),
      status: constant(problemStatuses[code], "The HTTP status."),
      code: constant(code, "The kind of problem, for programs."),
      detail: text({ description: "What went wrong this time.", example: code }),
      request_id: text({
        description: "Id of the request, as in the header `X-Request-Id` and in the log of the service.",
        example: "P2wbDo1VSg2ajgpt",
      }).optional(),
      ...(withErrors.includes(code) ? { errors } : {}),
    })
    .describe(code);
}

export const problemSchemas: Record<string, z.ZodTypeAny> = Object.fromEntries(
  problemCodes.map((code) => [problemComponent(code), problem(code)]),
);

/** A problem as it leaves (RFC 9457). */
export interface Problem {
  type: string;
  title: string;
  status: number;
  code: ProblemCode;
  detail: string;
  request_id?: string;
  errors?: FieldError[];
}
