import type { Input, Operation } from "./types.js";

/** Asks for the client's version of the model, unless the scene asks for one itself. */
export function withModelVersion(operation: Operation, input: Input, version: string | undefined): Input {
  if (version === undefined || !operation.versioned) return input;
  return { ...input, body: expecting(version, input.body) };
}

/** A body that asks for a version of the model. */
export function expecting(version: string, body: object | undefined): object {
  const asked: { expect_model_version?: unknown } = { ...body };
  // Also a scene that hands `undefined` on asks for none.
  asked.expect_model_version ??= version;
  return asked;
}
