import type { Input, Operation } from "./types.js";

/** Asks for the client's version of the model, unless the scene asks for one itself. */
export function withModelVersion(operation: Operation, input: Input, version: string | undefined): Input {
  if (version === undefined || !operation.versioned) return input;
  const body: { expect_model_version?: unknown } = { ...input.body };
  // Also a scene that hands `undefined` on asks for none.
  body.expect_model_version ??= version;
  return { ...input, body };
}
