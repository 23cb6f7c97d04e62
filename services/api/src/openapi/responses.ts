import {
  type FieldError,
  type ProblemCode,
  problemComponent,
  problemKinds,
  problemType,
  reference,
} from "@sunfathom/contract";
import { outsideLight } from "@sunfathom/words";

/** A header of a response, in the description. */
export interface Header {
  type: "string";
  description: string;
}

export const requestIdHeader: Record<string, Header> = {
  "X-Request-Id": {
    type: "string",
    description: "Id of the request: the one that it came with, if that was short and plain, or a new one.",
  },
};

/** What every answer that counts against the limit says of it. */
export const commonHeaders: Record<string, Header> = {
  ...requestIdHeader,
  "RateLimit-Policy": {
    type: "string",
    description: "The budget of one client: so much cost (`q`) in so many seconds (`w`).",
  },
  RateLimit: {
    type: "string",
    description: "What is left of it (`r`), and in how many seconds it is whole again (`t`).",
  },
};

export const etagHeaders: Record<string, Header> = {
  ...commonHeaders,
  ETag: {
    type: "string",
    description: "Strong tag of this answer: send it as `If-None-Match`, and a 304 costs no computing.",
  },
  "Cache-Control": { type: "string", description: "Keep the answer, but ask before using it again." },
};

const retryAfter: Header = { type: "string", description: "Seconds after which to try again." };

/** Headers that a kind of problem brings. */
const headersOf: Partial<Record<ProblemCode, Record<string, Header>>> = {
  unauthorized: { "WWW-Authenticate": { type: "string", description: "How to bring the key." } },
  method_not_allowed: { Allow: { type: "string", description: "The methods that the path takes." } },
  unsupported_media_type: {
    Accept: { type: "string", description: "The media type that is understood." },
    "Accept-Encoding": { type: "string", description: "The content encoding that is understood." },
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
    const { status } = problemKinds[code];
    byStatus.set(status, [...(byStatus.get(status) ?? []), code]);
  }
  return {
    // Keys that are whole numbers ascend by themselves (ECMA-262, OrdinaryOwnPropertyKeys).
    ...Object.fromEntries([...byStatus].map(([status, kinds]) => [String(status), problemResponse(kinds)])),
    default: {
      ...problemResponse(["not_found", "method_not_allowed"]),
      description: "The request did not reach this operation: another path or method than it has.",
    },
  };
}

function problemResponse(codes: readonly ProblemCode[]): object {
  const refs = codes.map((code) => ({ $ref: reference(problemComponent(code)) }));
  const [first] = refs;
  return {
    description: codes.map((code) => problemKinds[code].title).join(" Or: "),
    headers: Object.assign({}, commonHeaders, ...codes.map((code) => headersOf[code])),
    content: {
      "application/problem+json": {
        schema: refs.length === 1 ? first : { oneOf: refs },
        examples: Object.fromEntries(codes.map((code) => [code, { value: example(code) }])),
      },
    },
  };
}

function example(code: ProblemCode): object {
  const { title, status, explanation } = problemKinds[code];
  const errors = exampleErrors[code];
  return {
    type: problemType(code),
    title,
    status,
    code,
    detail: errors?.[0]?.message ?? explanation,
    request_id: "3f6c1b0e-8d55-4d0a-9a8e-0a6d2f1c7b44",
    ...(errors === undefined ? {} : { errors }),
  };
}

const tooDeep = { depth_m: 60, max_depth_m: 48.2 };
const noDaylightLeft = outsideLight.no_daylight_left(tooDeep);

const exampleErrors: Partial<Record<ProblemCode, FieldError[]>> = {
  invalid_scene: [
    {
      pointer: "/dept_m",
      code: "unknown_field",
      message: "There is no field dept_m.",
      allowed: "depth_m",
      did_you_mean: "depth_m",
    },
  ],
  invalid_request: [
    {
      pointer: "/count",
      code: "out_of_range",
      message: "0 is too little.",
      allowed: "a whole number, 1 to 200",
    },
  ],
  paper_not_possible: [
    {
      pointer: "/templates/0",
      code: "template_not_at_level",
      message: "mired_shift is not asked at this level, only at: expert.",
      allowed: "kinds of question that this level has",
    },
  ],
  responses_do_not_fit: [
    {
      pointer: "/responses/0/item",
      code: "item_unknown",
      message: 'The paper has no question "q99".',
      allowed: "ids of the paper's questions",
    },
  ],
  token_refused: [
    {
      pointer: "/token",
      code: "token_refused",
      message: "This token was altered, or sealed with another key.",
      allowed: "a token as the service gave it with the paper",
    },
  ],
  marks_held_back: [
    {
      pointer: "/token",
      code: "not_closed_yet",
      message:
        "The answers fit the paper. It closes at 2026-05-12T09:30:00.000Z: send them again then, as nothing is stored here.",
      allowed: "answers to a paper that has closed, or the instructor's key",
    },
  ],
  token_expired: [
    {
      pointer: "/token",
      code: "token_expired",
      message: "This token expired at 2026-05-12T09:30:00.000Z.",
      allowed: "a token that has not expired",
    },
  ],
  questions_changed: [
    {
      pointer: "/token",
      code: "questions_changed",
      message:
        "The questions were made with model version 2026.10.3, and would come out otherwise today. Ask for a new paper.",
      allowed: "a token of a paper that is made today",
    },
  ],
  invalid_query: [
    {
      pointer: "/page",
      code: "unknown_field",
      message: "There is no query parameter of this name.",
      allowed: "no query parameters",
    },
  ],
  outside_the_model: [
    {
      pointer: "/depth_m",
      code: "no_daylight_left",
      message: noDaylightLeft.message,
      allowed: noDaylightLeft.allowed,
      parameters: tooDeep,
    },
  ],
};
