import { existsSync, readFileSync } from "node:fs";
import type { Json } from "./json.js";

/** Written by write-answers.ts, and committed. */
export const answersFile = new URL("../../docs/generated/answers.json", import.meta.url);

/** An answer that the service has given, as it stands in the description. */
export interface KeptAnswer {
  summary: string;
  /** what was shortened, where something was */
  description?: string;
  value: Json;
}

/** By the names of their components. None before the first has been written. */
export function answersKept(): Readonly<Record<string, KeptAnswer>> {
  return existsSync(answersFile) ? JSON.parse(readFileSync(answersFile, "utf8")) : {};
}

/** Name of the component that has the example answer of a path. */
export const answerName = (path: string): string =>
  path
    .replace(/^\/(v1\/)?/, "")
    .replace(/\{[^{}]*\}/g, "kind")
    .replaceAll("/", "-");
