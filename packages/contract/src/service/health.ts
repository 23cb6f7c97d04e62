import { z } from "zod/v3";
import { choice } from "../field/choice.js";

const HealthStatus = z.enum(["live", "ready"]);

export const Health = z
  .object({
    status: choice(HealthStatus, {
      description: "`live`: the process runs. `ready`: it answers requests.",
      example: "ready",
    }),
  })
  .describe("The state of the service.");
