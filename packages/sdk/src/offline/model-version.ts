import { modelVersion as builtIn } from "@sunfathom/answers";

/**
 * Version of the model that this package computes with. The service says its own in every answer, as `model.version`.
 * @example
 * const client = new Sunfathom({ baseUrl, expectModelVersion: modelVersion });
 */
export const modelVersion: string = builtIn;
