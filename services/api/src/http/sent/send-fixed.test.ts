import Fastify from "fastify";
import { expect, it } from "vitest";
import { fixed, fixedJson, sendFixed } from "./send-fixed.js";

async function ask(ifNoneMatch?: string) {
  const app = Fastify();
  app.get("/", (request, reply) => sendFixed(request, reply, fixedJson('{"a":1.50}', '"tag"')));
  const headers = ifNoneMatch === undefined ? {} : { "if-none-match": ifNoneMatch };
  const { statusCode, body, headers: answered } = await app.inject({ url: "/", headers });
  return { statusCode, body, headers: answered };
}

it.each([undefined, '"other"', "tag", '*, "other"'])(
  "is sent as it stands for If-None-Match %j",
  async (asked) => {
    const { statusCode, body, headers } = await ask(asked);
    expect([statusCode, body]).toEqual([200, '{"a":1.50}']);
    expect(headers).toMatchObject({
      "content-type": "application/json",
      etag: '"tag"',
      "cache-control": "no-cache",
    });
  },
);

// RFC 9110, section 13.1.2 and 15.4.5: a 304 without content, with the tag that a 200 would have had.
it.each(['"tag"', 'W/"tag"', '"other", "tag"', "*", " * "])(
  "is known already to whoever asks with If-None-Match %j",
  async (asked) => {
    const { statusCode, body, headers } = await ask(asked);
    expect([statusCode, body, headers["etag"]]).toEqual([304, "", '"tag"']);
  },
);

// RFC 9110, section 8.8.3: a strong tag changes with every byte.
it("has a tag of its bytes where it is given none", () => {
  const tags = ["a", "b", Buffer.from([0xff, 0xfe]), Buffer.from([0xff, 0xfd])].map(
    (content) => fixed("text/plain", content).etag,
  );
  for (const tag of tags) expect(tag).toMatch(/^"[\w-]{20}"$/);
  expect(new Set(tags).size).toBe(4);
  expect(fixed("text/plain", "a").etag).toBe(tags[0]);
});
