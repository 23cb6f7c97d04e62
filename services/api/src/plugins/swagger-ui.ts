import swaggerUi from "@fastify/swagger-ui";
import type { FastifyInstance } from "fastify";

/**
 * The documentation page, served whole from here: it loads nothing from elsewhere.
 * @see https://github.com/fastify/fastify-swagger-ui
 */
export async function registerSwaggerUi(app: FastifyInstance): Promise<void> {
  await app.register(swaggerUi, {
    routePrefix: "/docs",
    uiConfig: { layout: "BaseLayout", docExpansion: "list", defaultModelsExpandDepth: 0 },
    theme: { title: "Sunfathom: API documentation" },
    staticCSP: true,
  });
}
