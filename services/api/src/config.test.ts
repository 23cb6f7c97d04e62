import { describe, expect, it } from "vitest";
import { readConfig } from "./config.js";

describe("the configuration", () => {
  it("has defaults that keep the service to this machine", () => {
    expect(readConfig({})).toEqual({ host: "127.0.0.1", port: 8080, logLevel: "info" });
  });

  it("is what the environment says", () => {
    expect(readConfig({ HOST: "0.0.0.0", PORT: "0", LOG_LEVEL: "silent", OTHER: "x" })).toEqual({
      host: "0.0.0.0",
      port: 0,
      logLevel: "silent",
    });
  });

  it.each([
    ["PORT", ""],
    ["PORT", "80a"],
    ["PORT", "-1"],
    ["PORT", "65536"],
    ["PORT", "8e3"],
    ["PORT", "80.5"],
    ["HOST", ""],
    ["HOST", "http://127.0.0.1"],
    ["LOG_LEVEL", ""],
    ["LOG_LEVEL", "loud"],
  ])("refuses %s=%j by name", (name, value) => {
    expect(() => readConfig({ [name]: value })).toThrow(
      new RegExp(`^${name} is ${JSON.stringify(value)}, but must be `),
    );
  });
});
