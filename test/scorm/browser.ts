import { existsSync } from "node:fs";
import { delimiter, join } from "node:path";

/** Path of Chromium, as Debian has it; undefined where there is none. */
export const chromium: string | undefined = (process.env["PATH"] ?? "")
  .split(delimiter)
  .map((folder) => join(folder, "chromium"))
  .find((file) => existsSync(file));

export const launchOptions = {
  executablePath: chromium ?? "",
  args: ["--no-sandbox", "--disable-gpu", "--disable-dev-shm-usage"],
};

if (chromium === undefined)
  console.warn("There is no program called chromium: practice packages are not played in a browser.");
