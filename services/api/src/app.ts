import Fastify, { type FastifyBaseLogger, type FastifyInstance } from "fastify";
import { handleClientError } from "./http/client-error.js";
import { handleError } from "./http/errors.js";
import { KnownRoutes } from "./http/known-routes.js";
import { OneLineLog } from "./http/log-controller.js";
import { notFoundHandler } from "./http/not-found.js";
import { requestId } from "./http/request-id.js";
import { sendPlainProblem } from "./http/send-problem.js";
import { defaultLimits, type Limits } from "./limits.js";
import { sharedSchemas } from "./openapi/components.js";
import { registerSwagger } from "./plugins/swagger.js";
import { registerSwaggerUi } from "./plugins/swagger-ui.js";
import { calculationRoutes } from "./routes/calculations.js";
import { descriptionRoutes } from "./routes/description.js";
import { healthRoutes } from "./routes/health.js";
import { problemPageRoutes } from "./routes/problem-pages.js";
import { referenceRoutes } from "./routes/reference.js";

/**
 * The application, without a port.
 * @param logger none when left out
 */
export async function createApp(
  logger?: FastifyBaseLogger,
  limits: Limits = defaultLimits,
): Promise<FastifyInstance> {
  const app = Fastify({
    ...(logger === undefined ? {} : { loggerInstance: logger }),
    logController: new OneLineLog(),
    genReqId: requestId,
    bodyLimit: limits.bodyBytes,
    requestTimeout: limits.requestTimeout_ms,
    connectionTimeout: limits.connectionTimeout_ms,
    keepAliveTimeout: limits.keepAliveTimeout_ms,
    handlerTimeout: limits.handlerTimeout_ms,
    http: {
      maxHeaderSize: limits.headerBytes,
      headersTimeout: limits.headersTimeout_ms,
      connectionsCheckingInterval: limits.timeoutCheck_ms,
    },
    routerOptions: {
      maxParamLength: limits.pathParameterCharacters,
      // Query strings are read in one place, http/query.ts, by whoever takes them.
      querystringParser: () => ({}),
    },
    // A request that is there already is answered, and its connection closed.
    return503OnClosing: false,
    clientErrorHandler: handleClientError,
    frameworkErrors: (error, request, reply) => {
      reply.header("x-request-id", request.id);
      handleError(error, request, reply);
    },
  });
  const routes = new KnownRoutes();
  routes.watch(app);
  onlyJson(app);
  leaveSchemasToAnswers(app);
  app.addHook("onRequest", (request, reply, done) => {
    reply.header("x-request-id", request.id);
    if ((request.raw.url ?? "").length <= limits.urlCharacters) done();
    else sendPlainProblem(reply, "url_too_long", `The URL has more than ${limits.urlCharacters} characters.`);
  });
  app.setErrorHandler(handleError);
  app.setNotFoundHandler(notFoundHandler(routes));
  for (const schema of sharedSchemas()) app.addSchema(schema);
  await registerSwagger(app);
  await registerSwaggerUi(app);
  calculationRoutes(app);
  referenceRoutes(app);
  healthRoutes(app);
  problemPageRoutes(app);
  descriptionRoutes(app);
  return app;
}

/** Takes JSON bodies and no others. A member called `__proto__` makes the body malformed. */
function onlyJson(app: FastifyInstance): void {
  app.removeAllContentTypeParsers();
  app.addContentTypeParser(
    "application/json",
    { parseAs: "string" },
    app.getDefaultJsonParser("error", "error"),
  );
}

/**
 * The schemas of routes describe them. Checking scenes and putting answers into form is the business of
 * @sunfathom/answers, from the same schemas, so that the service and the offline mode cannot disagree.
 */
function leaveSchemasToAnswers(app: FastifyInstance): void {
  app.setValidatorCompiler(() => () => true);
  app.setSerializerCompiler(() => (body) => JSON.stringify(body));
}
