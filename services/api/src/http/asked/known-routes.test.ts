import Fastify from "fastify";
import { describe, expect, it } from "vitest";
import { KnownRoutes } from "./known-routes.js";

function routesOfAnApp(): KnownRoutes {
  const app = Fastify();
  const routes = new KnownRoutes();
  app.get("/before", () => "");
  routes.watch(app);
  app.post("/things", () => "");
  app.get("/things", () => "");
  app.route({ method: ["PUT", "DELETE"], url: "/things/:name", handler: () => "" });
  app.put("/things/:name/parts/:part", () => "");
  app.get("/a.b+(c)", { exposeHeadRoute: false }, () => "");
  app.get("/files/*", () => "");
  return routes;
}

describe("known routes", () => {
  it.each([
    ["/things", ["GET", "HEAD", "OPTIONS", "POST"]],
    ["/things/one", ["DELETE", "OPTIONS", "PUT"]],
    ["/things/one/parts/2", ["OPTIONS", "PUT"]],
    ["/a.b+(c)", ["GET", "OPTIONS"]],
    ["/things/", []],
    ["/things/one/two", []],
    ["/things//parts/2", []],
    ["/more/things", []],
    ["/things/one/parts/2/more", []],
    ["/aXb+(c)", []],
    ["/a.bb(c)", []],
    ["/a.b+c", []],
    ["/before", []],
    ["/", []],
  ])("%s takes %j", (path, methods) => {
    expect(routesOfAnApp().methodsOf(path)).toEqual(methods);
  });

  it("suggest each path once, and none that has a parameter or takes whatever follows", () => {
    expect(routesOfAnApp().paths()).toEqual(["/things", "/a.b+(c)"]);
  });
});
