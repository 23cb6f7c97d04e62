import request from "supertest";
import { describe, expect, it } from "vitest";
import { createApp } from "../app.js";
import { unhurried } from "../unhurried.test-support.js";

describe("every answer", () => {
  it.each(["/v1/models", "/v1/attenuation", "/v1/unheard-of", "/health/live", "/openapi.json"])(
    "of %s tells browsers to make nothing of it but data",
    async (path) => {
      const app = await createApp({ limits: unhurried });
      await app.ready();
      const { headers } = await request(app.server).get(path);
      await app.close();
      // Content Security Policy Level 3, section 6.1.3 and 6.4.2.
      expect(headers["content-security-policy"]).toBe("default-src 'none';frame-ancestors 'none'");
      expect(headers["x-content-type-options"]).toBe("nosniff");
      expect(headers["referrer-policy"]).toBe("no-referrer");
      expect(headers).not.toHaveProperty("x-powered-by");
      expect(headers).not.toHaveProperty("server");
      expect(headers).not.toHaveProperty("strict-transport-security");
    },
  );
});
