import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";

/** Filled by the build (services/api/scripts/write-pages.mjs). */
const folder = fileURLToPath(new URL("../../../pages/", import.meta.url));

/** What the build has made of a page or taken for it. @throws Error where the build has not run */
export const built = (name: string): Buffer => readFileSync(`${folder}${name}`);

export interface Guide {
  name: string;
  title: string;
  summary: string;
  html: string;
}

/** Pages that are written by hand, as the build has turned them into HTML. */
export interface Written {
  guides: Guide[];
  changes: { markdown: string; html: string };
}

export const written = (): Written => JSON.parse(built("written.json").toString("utf8"));
