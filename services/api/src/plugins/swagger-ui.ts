import swaggerUi from "@fastify/swagger-ui";
import type { FastifyInstance } from "fastify";

/**
 * Stricter than the policy that comes with the page, which lets fonts, styles and a badge come from elsewhere, and turns
 * what is asked for over HTTP to HTTPS, where a service on a local network has none.
 */
const onlyFromHere = {
  "default-src": ["'self'"],
  "base-uri": ["'self'"],
  "font-src": ["'self'", "data:"],
  "frame-ancestors": ["'self'"],
  "img-src": ["'self'", "data:"],
  "object-src": ["'none'"],
  "script-src": ["'self'"],
  "script-src-attr": ["'none'"],
  "style-src": ["'self'"],
};

/**
 * The documentation page, served whole from here: it loads nothing from elsewhere.
 * @see https://github.com/fastify/fastify-swagger-ui
 */
export async function registerSwaggerUi(app: FastifyInstance): Promise<void> {
  await app.register(swaggerUi, {
    routePrefix: "/docs",
    uiConfig: { layout: "BaseLayout", docExpansion: "list", defaultModelsExpandDepth: 0 },
    theme: { title: "Sunfathom: API documentation" },
    staticCSP: onlyFromHere,
  });
}
