import { z } from "zod/v3";
import { choice } from "../field/choice.js";
import { build } from "../reference/build.js";

const HealthStatus = z.enum(["live", "ready"]);

export const Health = z
  .object({
    status: choice(HealthStatus, {
      description: "`live`: the process runs. `ready`: it answers requests.",
      example: "ready",
    }),
    build,
  })
  .describe("The state of the service.");
