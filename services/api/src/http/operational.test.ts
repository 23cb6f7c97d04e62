import { expect, it } from "vitest";
import { isOperational } from "./operational.js";

// Guards which paths no limit holds at: as many requests as anybody likes go there.
it.each([
  "/health/live",
  "/health/ready",
  "/health",
  "/docs",
  "/docs/",
  "/docs/static/index.html",
  "/openapi.json",
  "/metrics",
])("%s is for whoever runs or explores the service", (path) => {
  expect(isOperational(path)).toBe(true);
});

it.each([
  "/v1/models",
  "/",
  "",
  "/healthy",
  "/docs2",
  "/v1/docs",
  "/v1/health/live",
  "/openapi.jsonx",
  "/openapiXjson",
  "/metrics/more",
  "/v1/metrics",
])("%j is not", (path) => {
  expect(isOperational(path)).toBe(false);
});
