import { expect, it } from "vitest";
import { isOperational } from "./operational.js";

// Guards which paths no limit holds at: as many requests as anybody likes go there.
it.each(["/health/live", "/health/ready"])("%s is for whoever runs the service", (path) => {
  expect(isOperational(path)).toBe(true);
});

it.each([
  "/v1/models",
  "/",
  "",
  "/healthy",
  "/health",
  "/health/",
  "/health/live/",
  "/health/other",
  "/docs",
  "/v1/health/live",
  "/openapi.json",
  "/metrics",
])("%j is not", (path) => {
  expect(isOperational(path)).toBe(false);
});
