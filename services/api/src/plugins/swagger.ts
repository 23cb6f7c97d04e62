import swagger from "@fastify/swagger";
import type { FastifyInstance } from "fastify";
import { instructorScheme } from "../features/quiz/description.js";
import { answersKept } from "../openapi/answers-kept.js";
import { finish } from "../openapi/finish.js";

/**
 * Writes the OpenAPI description from the routes' schemas, so that it cannot say anything else than they do.
 * @see https://github.com/fastify/fastify-swagger
 */
export async function registerSwagger(app: FastifyInstance): Promise<void> {
  await app.register(swagger, {
    openapi: {
      openapi: "3.1.0",
      info: {
        title: "Sunfathom",
        summary: "The light under water, and what to mount, set and switch on.",
        description:
          "Light and colour for anyone who films under water: what the water leaves of the light, which filter to mount on the lens, what it costs in exposure, and how video lights and daylight go together. All from one spectral model that says how sure it is and why. This plans pictures, not dives: it gives no advice on depth, gas or decompression.",
        version: "0.1.0",
        license: { name: "Apache-2.0", identifier: "Apache-2.0" },
      },
      servers: [{ url: "/", description: "The service that this description came from." }],
      security: [],
      tags: [
        {
          name: "Batches",
          description: "Many scenes in one call, answered as a stream.",
        },
        {
          name: "Calculations",
          description: "Answers to a scene. POST is as safe as GET: nothing is stored.",
        },
        {
          name: "Pictures",
          description:
            "What people look at: drawn from the figures of the calculations, to show on any page.",
        },
        {
          name: "Quiz",
          description: "Questions for courses: drawn, marked, and packed for learning platforms.",
        },
        { name: "Reference data", description: "What a scene can name, and the parts of the model." },
        { name: "Service", description: "The state of the service, and what its problems mean." },
        {
          name: "Sheets",
          description: "What people print and take along: made of the same scenes.",
        },
        {
          name: "Trips",
          description: "More than one dive at a time: when the light is best, and what to take.",
        },
      ],
      components: {
        securitySchemes: {
          [instructorScheme]: {
            type: "http",
            scheme: "bearer",
            description: "The instructor's key of this service (`INSTRUCTOR_KEY`).",
          },
        },
      },
    },
    // The component's own name, which is its $id.
    refResolver: { buildLocalReference: (json, _, __, index) => String(json["$id"] ?? `def-${index}`) },
    transformObject: (written) =>
      "openapiObject" in written ? finish(written.openapiObject, answersKept()) : written.swaggerObject,
  });
}
