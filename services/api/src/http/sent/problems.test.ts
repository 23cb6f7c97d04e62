import { connect } from "node:net";
import {
  problemCodes,
  problemComponent,
  problemStatuses,
  problemType,
  wireSchemas,
} from "@sunfathom/contract";
import { itemsFor } from "@sunfathom/quiz";
import { Ajv } from "ajv";
import type { FastifyInstance } from "fastify";
import request from "supertest";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { createApp } from "../../app.js";
import { buildApp } from "../../build-app.test-support.js";
import {
  paperRequest,
  post as postQuiz,
  quizSettings,
  tokenFor,
} from "../../features/quiz/quiz.test-support.js";
import { unhurried } from "../../unhurried.test-support.js";

let app: FastifyInstance;
let strict: FastifyInstance;
let late: FastifyInstance;
beforeAll(async () => {
  strict = await buildApp({ limits: { costPerWindow: 1 } });
  await strict.ready();
  const impatient = {
    ...unhurried,
    headersTimeout_ms: 200,
    requestTimeout_ms: 300,
    timeoutCheck_ms: 50,
  };
  app = await createApp({ limits: impatient, quiz: quizSettings });
  app.get("/test/breaks", () => {
    throw new Error("the secret of the inside");
  });
  app.get("/test/refuses", () => {
    throw Object.assign(new Error("secret"), { statusCode: 418 });
  });
  // An application of its own: a thread that has just started may take its time on a busy machine.
  late = await buildApp({ limits: { handlerTimeout_ms: 300 } });
  late.get("/test/takes-long", () => new Promise(() => {}));
  await late.ready();
  await app.listen({ host: "127.0.0.1", port: 0 });
});
afterAll(() => Promise.all([app.close(), strict.close(), late.close()]));

interface Response {
  status: number;
  headers: Record<string, string>;
  body: Record<string, unknown>;
}

/** Sends `text` as it stands, which no client would, and reads the answer until the connection ends. */
function raw(text: string): Promise<Response> {
  const address = app.server.address();
  if (address === null || typeof address === "string") throw new Error("The service has no port.");
  return new Promise((resolve, reject) => {
    let answer = "";
    const socket = connect(address.port, "127.0.0.1", () => socket.write(text));
    socket.setEncoding("utf8");
    socket.on("data", (part) => {
      answer += part;
    });
    socket.on("error", reject);
    socket.on("end", () => {
      const [head = "", body = ""] = answer.split("\r\n\r\n");
      const [statusLine = "", ...lines] = head.split("\r\n");
      const headers = Object.fromEntries(
        lines.map((line) => [
          line.slice(0, line.indexOf(":")).toLowerCase(),
          line.slice(line.indexOf(":") + 2),
        ]),
      );
      resolve({ status: Number(statusLine.split(" ")[1]), headers, body: JSON.parse(body) });
    });
  });
}

async function via(test: request.Test): Promise<Response> {
  const response = await test;
  return { status: response.status, headers: response.headers, body: response.body };
}

const scene = { water_type: "IB", depth_m: 12 };
const post = (body: object | string) =>
  request(app.server).post("/v1/attenuation").set("Content-Type", "application/json").send(body);

const answers = async (token: Promise<string>, item = "q1") =>
  via(postQuiz(app, "answers", { token: await token, responses: [{ item, choices: ["A"] }] }));
const paper = { level: "beginner", count: 1 };
const keyed = { ...paper, title: "Colour", with_keys: true };

/** A request that meets each kind of problem. */
const causes: Record<(typeof problemCodes)[number], () => Promise<Response>> = {
  invalid_scene: () => via(post({ ...scene, dept_m: 3 })),
  invalid_request: () => via(postQuiz(app, "items", { ...paper, level: "captain" })),
  unauthorized: () => via(postQuiz(app, "packages", keyed)),
  keys_not_offered: async () => {
    const without = await buildApp();
    await without.ready();
    return via(postQuiz(without, "packages", keyed)).finally(() => without.close());
  },
  marks_held_back: async () =>
    via(postQuiz(app, "answers", { token: await tokenFor(undefined, { open_s: 3600 }), responses: [] })),
  paper_not_possible: () => via(postQuiz(app, "items", { ...paper, templates: ["mired_shift"] })),
  responses_do_not_fit: () => answers(tokenFor(), "q99"),
  token_refused: () => answers(tokenFor().then((token) => `${token}AAAA`)),
  token_expired: () => answers(tokenFor(undefined, { ago_s: 7200 })),
  questions_changed: () => answers(tokenFor(itemsFor(paperRequest).slice(1))),
  invalid_query: () => via(request(app.server).get("/v1/models?page=2")),
  malformed_json: () => via(post('{"water_type":')),
  malformed_request: () => raw("HELLO\r\n\r\n"),
  not_found: () => via(request(app.server).get("/v1/atenuation")),
  method_not_allowed: () => via(request(app.server).delete("/v1/attenuation")),
  not_acceptable: () => via(request(app.server).get("/v1/models").set("Accept", "text/html")),
  request_timeout: () =>
    raw(
      "POST /v1/attenuation HTTP/1.1\r\nHost: a\r\nContent-Type: application/json\r\nContent-Length: 50\r\n\r\n{",
    ),
  model_version_mismatch: () => via(post({ ...scene, expect_model_version: "1999.1.1" })),
  body_too_large: () => via(post(JSON.stringify({ note: "a".repeat(unhurried.bodyBytes) }))),
  url_too_long: () => via(request(app.server).get(`/v1/attenuation?water_type=${"I".repeat(5000)}`)),
  unsupported_media_type: () =>
    via(request(app.server).post("/v1/attenuation").set("Content-Type", "text/plain").send("IB")),
  outside_the_model: () => via(post({ ...scene, sun_elevation_deg: 1 })),
  headers_too_large: () => raw(`GET / HTTP/1.1\r\nHost: a\r\nX-Long: ${"a".repeat(20000)}\r\n\r\n`),
  too_many_requests: async () => {
    await request(strict.server).get("/v1/models");
    return via(request(strict.server).get("/v1/models"));
  },
  internal_error: () => via(request(app.server).get("/test/breaks")),
  unavailable: () => via(request(late.server).get("/test/takes-long")),
};

// Ajv is the independent reader of JSON Schema.
const ajv = new Ajv({ strict: true, allErrors: true, keywords: ["x-unit", "x-decimals"] });
for (const [name, schema] of Object.entries(wireSchemas)) ajv.addSchema({ ...schema, $id: name });

describe.each(problemCodes)("%s", (code) => {
  it("is met, has the status and media type of RFC 9457 and keeps its description", async () => {
    const response = await causes[code]();
    expect(response.body["code"]).toBe(code);
    expect(response.status).toBe(problemStatuses[code]);
    // RFC 9457, section 3.1.2: "status", if present, is the status of the response.
    expect(response.body["status"]).toBe(response.status);
    expect(response.headers["content-type"]).toBe("application/problem+json; charset=utf-8");
    expect(response.headers["x-request-id"]).toBe(response.body["request_id"]);
    const validate = ajv.getSchema(problemComponent(code));
    expect(validate?.(response.body), ajv.errorsText(validate?.errors)).toBe(true);
  });

  // RFC 9457, section 3.1.1: dereferencing "type" should give documentation.
  it("is explained where its type leads to", async () => {
    const page = await request(app.server).get(problemType(code)).expect(200);
    expect(page.body).toMatchObject({ type: problemType(code), code, status: problemStatuses[code] });
  });
});

describe("a problem", () => {
  it("of the service says nothing of its inside", async () => {
    const { body } = await causes.internal_error();
    expect(JSON.stringify(body)).not.toMatch(/secret|Error:|\.ts|\.js|node_modules/);
  });

  it("of a refusal that it does not know is the caller's, not a failure", async () => {
    const refused = await request(app.server).get("/test/refuses").expect(400);
    expect(refused.body).toMatchObject({
      code: "malformed_request",
      detail: "The request cannot be understood.",
    });
    await request(app.server).get("/docs/static/%2e%2e/%2e%2e/package.json").expect(404);
  });

  it("of an unknown path names the nearest one there is", async () => {
    expect((await causes.not_found()).body["detail"]).toBe("Did you mean /v1/attenuation?");
    const far = await request(app.server).get("/wp-admin/setup.php").expect(404);
    expect(far.body.detail).toContain("/openapi.json");
  });

  // RFC 9110, section 15.5.16 and 12.5.1: a 415 may say in Accept what would have been understood.
  it("of a media type says which one is understood", async () => {
    expect((await causes.unsupported_media_type()).headers["accept"]).toBe("application/json");
  });

  // RFC 9110, section 10.2.3.
  it("of a service that cannot answer says when to try again", async () => {
    expect((await causes.unavailable()).headers["retry-after"]).toBe("1");
  });

  it("of an unknown kind lists the kinds", async () => {
    const response = await request(app.server).get("/problems/unheard-of").expect(404);
    expect(response.body.detail).toContain("/problems/invalid-scene");
  });
});

describe("a body", () => {
  it.each([
    ["", "malformed_json"],
    ["[1,", "malformed_json"],
    ['{"__proto__": {"iso": 100}}', "invalid_scene"],
    ['{"constructor": {"prototype": {}}}', "invalid_scene"],
    ["null", "invalid_scene"],
    ["[]", "invalid_scene"],
    ['"IB"', "invalid_scene"],
    ['{"depth_m": 1e400, "water_type": "IB"}', "invalid_scene"],
  ])("of %j is refused as %s", async (body, code) => {
    const response = await post(body);
    expect(response.body.code).toBe(code);
  });

  it("is refused without a media type, and taken with parameters of it", async () => {
    const json = JSON.stringify(scene);
    const head = `POST /v1/attenuation HTTP/1.1\r\nHost: a\r\nConnection: close\r\nContent-Length: ${json.length}`;
    expect((await raw(`${head}\r\n\r\n${json}`)).body["code"]).toBe("unsupported_media_type");
    const typed = await raw(`${head}\r\nContent-Type: application/json;charset=UTF-8\r\n\r\n${json}`);
    expect(typed.status).toBe(200);
  });
});
