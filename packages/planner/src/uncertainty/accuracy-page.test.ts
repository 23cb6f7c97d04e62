// The page on how well the bounds hold tells what this planner gives, not what an earlier one did.
import { expect, it } from "vitest";

const PAGE = new URL("../../accuracy/", import.meta.url);

it("is what scripts/write-accuracy.mjs writes from this source; if not, run it", async () => {
  // The script's own parts, run here on the source instead of the build.
  const page = new URL("../../scripts/accuracy/page.mjs", import.meta.url);
  const files = new URL("../../../optics/scripts/accuracy/files.mjs", import.meta.url);
  const { accuracyFiles } = (await import(page.href)) as { accuracyFiles(): Record<string, string> };
  const { staleFiles } = (await import(files.href)) as {
    staleFiles(folder: URL, files: Record<string, string>): string[];
  };
  expect(staleFiles(PAGE, accuracyFiles())).toEqual([]);
});
