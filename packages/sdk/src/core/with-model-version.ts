import type { Input, Operation } from "./types.js";

/** Asks for the client's version of the model, unless the scene asks for one itself. */
export function withModelVersion(operation: Operation, input: Input, version: string | undefined): Input {
  if (version === undefined || !operation.versioned) return input;
  return { ...input, body: { expect_model_version: version, ...input.body } };
}
