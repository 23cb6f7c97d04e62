import { z } from "zod/v3";

export const Clarity = z
  .enum(["clear", "near_tie"])
  .describe("`clear`, or `near_tie` where what was not chosen could as well be the better one.");
