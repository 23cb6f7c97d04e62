import type { FastifyPluginAsync } from "fastify";
import { changelogRoute } from "./changelog.js";
import { clientPackageRoutes } from "./client-package.js";
import { descriptionRoutes } from "./description.js";
import { documentationRoutes } from "./documentation.js";
import { operationsIndexRoute } from "./index-of-operations.js";
import { problemPageRoutes } from "./problem-pages.js";

/** What an integrator reads and installs: index, description, its page and guides, pages of problems, changelog, the client. */
export const documentation: FastifyPluginAsync = async (app) => {
  problemPageRoutes(app);
  descriptionRoutes(app);
  operationsIndexRoute(app);
  changelogRoute(app);
  documentationRoutes(app);
  clientPackageRoutes(app);
};
