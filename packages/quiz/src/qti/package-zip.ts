import { checkpoint } from "@sunfathom/planner";
import { strToU8, Zip, ZipDeflate } from "fflate";
import type { Item } from "../item/item.js";
import { type PackageOptions, packageFiles } from "./package-files.js";

/** The same time in every file, so that the same paper gives the same bytes: the first that a zip can hold. */
const MTIME = new Date(1980, 0, 1);

/**
 * A content package as a zip, in chunks as they come: one item's markup in memory at a time, and between two of them a look
 * whether anybody waits for it.
 */
export function* packageZip(items: readonly Item[], options: PackageOptions): Generator<Uint8Array> {
  const ready: Uint8Array[] = [];
  const zip = new Zip((error, chunk) => {
    if (error) throw error;
    ready.push(chunk);
  });
  for (const { path, content } of packageFiles(items, options)) {
    checkpoint();
    const file = new ZipDeflate(path, { level: 6 });
    file.mtime = MTIME;
    zip.add(file);
    file.push(strToU8(content), true);
    yield* ready.splice(0);
  }
  zip.end();
  yield* ready.splice(0);
}
