import Fastify from "fastify";
import { expect, it } from "vitest";
import { registerSwagger } from "../plugins/swagger.js";
import { descriptionText } from "./text.js";

it("the description is JSON that can be read and compared line by line, with a line end", async () => {
  const app = Fastify();
  await registerSwagger(app);
  app.get("/v1/things", { schema: { summary: "Things" } }, () => "");
  await app.ready();
  const text = descriptionText(app);
  expect(JSON.parse(text)).toEqual(JSON.parse(JSON.stringify(app.swagger())));
  expect(text).toMatch(/\}\n$/);
  expect(text.split("\n")).toContain('      "get": {');
});
