import { readFileSync } from "node:fs";
import { modelVersion } from "@sunfathom/answers";
import Fastify from "fastify";
import { expect, it } from "vitest";
import { changelogRoute } from "./changelog.js";

const ask = (accept?: string) => {
  const app = Fastify();
  changelogRoute(app);
  return app.inject({ url: "/changelog", headers: accept === undefined ? {} : { accept } });
};
const committed = (file: string) => readFileSync(new URL(`../../../../../${file}`, import.meta.url), "utf8");

it("is both changelogs, as they are written, or as a page for browsers", async () => {
  const markdown = await ask();
  expect(markdown.headers["content-type"]).toBe("text/markdown; charset=utf-8");
  for (const file of ["openapi/CHANGELOG.md", "packages/planner/CHANGELOG.md"])
    expect(markdown.body).toContain(committed(file).trim());
  const html = await ask("text/html, */*;q=0.8");
  expect(html.headers["content-type"]).toBe("text/html; charset=utf-8");
  for (const { headers } of [markdown, html]) expect(headers["vary"]).toBe("Accept");
  expect(html.body).toContain(`<h2>${modelVersion}</h2>`);
});
