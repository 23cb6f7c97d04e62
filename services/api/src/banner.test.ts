import { expect, it } from "vitest";
import { banner } from "./banner.js";
import { buildApp } from "./build-app.test-support.js";

it("names where the service listens, where its documentation and its client are, and a request that is answered", async () => {
  const address = "http://127.0.0.1:8080";
  const lines = banner(address).split("\n");
  expect(lines).toHaveLength(4);
  expect(lines[0]).toContain(address);
  const app = await buildApp();
  for (const line of lines.slice(1)) {
    const url = new URL(/http[^' ]+/.exec(line)?.[0] ?? "");
    expect(url.origin).toBe(address);
    expect((await app.inject(url.pathname + url.search)).statusCode).toBe(200);
  }
  await app.close();
});
