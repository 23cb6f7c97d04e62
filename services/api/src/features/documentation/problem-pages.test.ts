import { problemCodes, problemType } from "@sunfathom/contract";
import { problemPage } from "@sunfathom/words";
import Fastify from "fastify";
import { describe, expect, it } from "vitest";
import { sharedSchemas } from "../../openapi/components.js";
import { problemPageRoutes } from "./problem-pages.js";

function makeApp() {
  const app = Fastify();
  for (const schema of sharedSchemas()) app.addSchema(schema);
  problemPageRoutes(app);
  return app;
}

// RFC 9457, section 3.1.1: dereferencing "type" should give documentation.
describe("the page of a problem", () => {
  it("says what the contract says of its kind, and has a tag of its own", async () => {
    const app = makeApp();
    const tags = new Set<unknown>();
    for (const code of problemCodes) {
      const reply = await app.inject(problemType(code));
      expect(reply.statusCode).toBe(200);
      expect(reply.json()).toEqual(JSON.parse(JSON.stringify(problemPage(code))));
      tags.add(reply.headers["etag"]);
    }
    expect(tags.size).toBe(problemCodes.length);
    const etag = String([...tags][0]);
    const again = await app.inject({ url: problemType(problemCodes[0]), headers: { "if-none-match": etag } });
    expect([again.statusCode, again.body]).toEqual([304, ""]);
  });

  // RFC 9110, section 12.5.1 and 12.5.5: what a browser sends, and what a cache must know.
  it("is HTML for browsers, with a tag of its own and nothing in it that could run", async () => {
    const app = makeApp();
    const url = problemType("invalid_scene");
    const accept = "text/html,application/xhtml+xml,application/xml;q=0.9,*/*;q=0.8";
    const [html, data] = [await app.inject({ url, headers: { accept } }), await app.inject(url)];
    expect(html.headers["content-type"]).toBe("text/html; charset=utf-8");
    expect(html.headers["content-security-policy"]).toContain("default-src 'none'");
    expect(html.headers["content-security-policy"]).not.toMatch(/unsafe|script-src/);
    for (const { headers } of [html, data]) expect(headers["vary"]).toBe("Accept");
    expect(html.headers["etag"]).not.toBe(data.headers["etag"]);
    const again = await app.inject({
      url,
      headers: { accept, "if-none-match": String(html.headers["etag"]) },
    });
    expect([again.statusCode, again.body]).toEqual([304, ""]);
  });

  it("gives nothing back of a name that there is not, also to browsers", async () => {
    const reply = await makeApp().inject({
      url: "/problems/%3Cscript%3Ealert(1)%3C%2Fscript%3E",
      headers: { accept: "text/html" },
    });
    expect(reply.statusCode).toBe(404);
    expect(reply.headers["content-type"]).toContain("application/problem+json");
    expect(reply.body).not.toMatch(/script/);
  });

  it("takes no query", async () => {
    const reply = await makeApp().inject("/problems/not-found?a=1");
    expect([reply.statusCode, reply.json().code]).toEqual([400, "invalid_query"]);
  });

  it.each(["unheard-of", "constructor", "not_found"])(
    "is not there for %s, which is told the kinds",
    async (name) => {
      const reply = await makeApp().inject(`/problems/${name}`);
      expect([reply.statusCode, reply.json().code]).toEqual([404, "not_found"]);
      expect(reply.json().detail).toContain("/problems/invalid-scene, ");
    },
  );
});
