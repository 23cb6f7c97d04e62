import { once } from "node:events";
import { type AddressInfo, connect, createServer, type Socket } from "node:net";
import { describe, expect, it } from "vitest";
import { securityHeaders } from "../../plugins/helmet.js";
import { handleClientError } from "./client-error.js";

const failure = (code?: string) => Object.assign(new Error("secret"), code === undefined ? {} : { code });

/** What a client reads, until its connection ends, where the server meets `error` on it. */
async function answerTo(
  error: Error & { code?: string },
  before?: (socket: Socket) => void,
): Promise<string> {
  const server = createServer((socket) => {
    before?.(socket);
    handleClientError(error, socket);
  });
  server.listen(0, "127.0.0.1");
  await once(server, "listening");
  const client = connect((server.address() as AddressInfo).port, "127.0.0.1");
  let text = "";
  client.setEncoding("utf8").on("data", (part) => {
    text += part;
  });
  client.on("error", () => {});
  await once(client, "close");
  server.close();
  await once(server, "close");
  return text;
}

describe("what the HTTP parser refuses", () => {
  // The codes of Node.js: https://nodejs.org/api/errors.html, and llhttp's for headers beyond the limit.
  it.each([
    ["HPE_HEADER_OVERFLOW", "431 Request Header Fields Too Large", "headers_too_large", "16 kB"],
    ["ERR_HTTP_REQUEST_TIMEOUT", "408 Request Timeout", "request_timeout", "in time"],
    ["HPE_INVALID_METHOD", "400 Bad Request", "malformed_request", "as HTTP"],
    [undefined, "400 Bad Request", "malformed_request", "as HTTP"],
  ])("for %s is answered on the bare socket with %s", async (code, status, problem, named) => {
    const text = await answerTo(failure(code));
    const [head = "", body = "", ...more] = text.split("\r\n\r\n");
    const [first, ...headers] = head.split("\r\n");
    expect(more).toEqual([]);
    expect(first).toBe(`HTTP/1.1 ${status}`);
    const { request_id, detail, ...rest } = JSON.parse(body);
    expect(request_id).toMatch(/^[\w-]{16}$/);
    expect(headers).toEqual([
      "Content-Type: application/problem+json; charset=utf-8",
      `Content-Length: ${Buffer.byteLength(body)}`,
      `X-Request-Id: ${request_id}`,
      "Content-Language: en",
      "Cache-Control: no-store",
      ...Object.entries(securityHeaders).map(([name, value]) => `${name}: ${value}`),
      "Connection: close",
    ]);
    expect(rest).toMatchObject({ code: problem, status: Number(status.slice(0, 3)) });
    expect(detail).toContain(named);
    expect(text).not.toContain("secret");
  });

  it("has no answer where the client is gone, or its connection has been ended", async () => {
    expect(await answerTo(failure("ECONNRESET"))).toBe("");
    expect(await answerTo(failure("HPE_INVALID_METHOD"), (socket) => socket.end())).toBe("");
  });
});
