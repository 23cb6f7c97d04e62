import {
  type FieldError,
  mostQuestions,
  type ProblemCode,
  problemComponent,
  problemStatuses,
  problemType,
  reference,
} from "@sunfathom/contract";
import {
  checkTexts,
  outsideLight,
  problemExplanations,
  problemTitles,
  type QuizRefusals,
  quizRefusals,
} from "@sunfathom/words";

const titles = problemTitles();

/** A header of a response, in the description. */
export interface Header {
  type: "string";
  description: string;
}

export const requestIdHeader: Record<string, Header> = {
  "X-Request-Id": {
    type: "string",
    description: "Id of the request: the one you sent, if it was short and plain, or a new one.",
  },
};

/** What every answer that counts against the limit says of it. */
export const commonHeaders: Record<string, Header> = {
  ...requestIdHeader,
  "RateLimit-Policy": {
    type: "string",
    description: "The budget of one client: cost (`q`) in seconds (`w`).",
  },
  RateLimit: {
    type: "string",
    description: "What is left of it (`r`), and in how many seconds it is full again (`t`).",
  },
};

/** What an answer says that is in a language. */
export const languageHeaders: Record<string, Header> = {
  "Content-Language": {
    type: "string",
    description:
      "Language of the texts: the `language` that was asked for, or what `Accept-Language` likes best.",
  },
};

export const etagHeaders: Record<string, Header> = {
  ...commonHeaders,
  ETag: {
    type: "string",
    description: "Strong tag of this answer: send it as `If-None-Match`, and a 304 costs no computing.",
  },
  "Cache-Control": {
    type: "string",
    description:
      "How long anyone may cache the answer. With `expect_model_version` in the request, that is longer: until the model changes.",
  },
};

/** By POST: nobody on the way keeps it, and the tag is the same as by GET. */
export const postHeaders: Record<string, Header> = {
  ...commonHeaders,
  ETag: { type: "string", description: "Strong tag of this answer: the same tag, the same bytes." },
  "Cache-Control": { type: "string", description: "Cache the answer, but ask before using it again." },
};

const retryAfter: Header = { type: "string", description: "Seconds after which to try again." };

/** Headers that a kind of problem brings. */
const headersOf: Partial<Record<ProblemCode, Record<string, Header>>> = {
  unauthorized: { "WWW-Authenticate": { type: "string", description: "How to send the key." } },
  method_not_allowed: { Allow: { type: "string", description: "The methods that the path takes." } },
  unsupported_media_type: {
    Accept: { type: "string", description: "The media type that the service understands." },
    "Accept-Encoding": { type: "string", description: "The content encoding that the service understands." },
  },
  too_many_requests: { "Retry-After": retryAfter },
  unavailable: { "Retry-After": retryAfter },
};

/** Any request can meet these. */
const everywhere: readonly ProblemCode[] = [
  "malformed_request",
  "not_acceptable",
  "request_timeout",
  "url_too_long",
  "headers_too_large",
  "too_many_requests",
  "internal_error",
  "unavailable",
];

/** The responses of an operation beside its answer: one for each status, with every kind of problem that has it. */
export function problemResponses(codes: readonly ProblemCode[]): Record<string, object> {
  const byStatus = new Map<number, ProblemCode[]>();
  for (const code of [...codes, ...everywhere]) {
    const status = problemStatuses[code];
    byStatus.set(status, [...(byStatus.get(status) ?? []), code]);
  }
  return {
    // Keys that are whole numbers ascend by themselves (ECMA-262, OrdinaryOwnPropertyKeys).
    ...Object.fromEntries([...byStatus].map(([status, kinds]) => [String(status), problemResponse(kinds)])),
    default: {
      ...problemResponse(["not_found", "method_not_allowed"]),
      description: "The request did not reach this operation: it has another path or method.",
    },
  };
}

function problemResponse(codes: readonly ProblemCode[]): object {
  const refs = codes.map((code) => ({ $ref: reference(problemComponent(code)) }));
  const [first] = refs;
  return {
    description: codes.map((code) => titles[code]).join(" Or: "),
    headers: Object.assign({}, commonHeaders, languageHeaders, ...codes.map((code) => headersOf[code])),
    content: {
      "application/problem+json": {
        schema: refs.length === 1 ? first : { oneOf: refs },
        examples: Object.fromEntries(codes.map((code) => [code, { value: example(code) }])),
      },
    },
  };
}

function example(code: ProblemCode): object {
  const errors = exampleErrors[code];
  return {
    type: problemType(code),
    title: titles[code],
    status: problemStatuses[code],
    code,
    detail: errors?.[0]?.message ?? problemExplanations[code],
    request_id: "P2wbDo1VSg2ajgpt",
    ...(errors === undefined ? {} : { errors }),
  };
}

/** An error as it is met, made of its code and parameters as the service makes it. */
function errorAt<Parameters>(
  pointer: string,
  code: string,
  say: (parameters: Parameters) => { message: string; allowed?: string },
  parameters: Parameters & object,
): FieldError {
  const { message, allowed = "" } = say(parameters);
  return { pointer, code, message, allowed, parameters };
}

const ofToken = <Code extends keyof QuizRefusals>(code: Code, parameters: QuizRefusals[Code] & object) => [
  errorAt("/token", code, quizRefusals[code], parameters),
];

const exampleErrors: Partial<Record<ProblemCode, FieldError[]>> = {
  invalid_scene: [
    {
      ...errorAt("/dept_m", "unknown_field", checkTexts.unknown_field, { name: "dept_m" }),
      allowed: "depth_m",
      did_you_mean: "depth_m",
    },
  ],
  invalid_request: [
    errorAt("/count", "out_of_range", checkTexts.out_of_range, {
      value: 0,
      minimum: 1,
      maximum: mostQuestions,
      whole: true,
    }),
  ],
  paper_not_possible: [
    errorAt("/templates/0", "template_not_at_level", quizRefusals.template_not_at_level, {
      template: "mired_shift",
      levels: ["expert"],
    }),
  ],
  responses_do_not_fit: [
    errorAt("/responses/0/item", "item_unknown", quizRefusals.item_unknown, { item: "q99" }),
  ],
  token_refused: ofToken("token_refused", {}),
  marks_held_back: ofToken("not_closed_yet", { closes_at: "2026-05-12T09:30:00.000Z" }),
  token_expired: ofToken("token_expired", { expired_at: "2026-05-12T09:30:00.000Z" }),
  questions_changed: ofToken("questions_changed", { model_version: "2026.10.3" }),
  invalid_query: [
    {
      pointer: "/page",
      code: "unknown_field",
      message: "There is no query parameter of this name.",
      allowed: "no query parameters",
    },
  ],
  outside_the_model: [
    errorAt("/depth_m", "no_daylight_left", outsideLight.no_daylight_left, {
      depth_m: 60,
      max_depth_m: 48.2,
      is_daylit: true,
    }),
  ],
};
