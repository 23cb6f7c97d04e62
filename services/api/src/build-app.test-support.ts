import { type AppOptions, createApp } from "./app.js";
import type { Limits } from "./config/limits.js";
import { unhurried } from "./unhurried.test-support.js";

/** An application as nearly every test has it: a busy machine turns nobody away, and what a test says of limits is all that differs. */
export const buildApp = ({
  limits,
  ...options
}: Omit<AppOptions, "limits"> & { limits?: Partial<Limits> } = {}) =>
  createApp({ ...options, limits: { ...unhurried, ...limits } });
