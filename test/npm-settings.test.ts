import { expect, it } from "vitest";
import { withoutNpmSettings } from "../.ci/environment.mjs";

it("keeps npm's own settings from the installer, and leaves the way to a registry", () => {
  const env = {
    HOME: "/home/diver",
    PATH: "/usr/bin",
    npm_config_cache: "/home/diver/.npm",
    npm_config_prefix: "/usr",
    npm_config_user_agent: "npm/11",
    npm_package_name: "sunfathom",
    npm_lifecycle_event: "pretest",
    npm_execpath: "/usr/lib/npm-cli.js",
    npm_config_https_proxy: "http://proxy.example:3128",
  };
  expect(withoutNpmSettings(env)).toEqual({
    HOME: "/home/diver",
    PATH: "/usr/bin",
    npm_config_https_proxy: "http://proxy.example:3128",
  });
});
