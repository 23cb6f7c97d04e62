import { checkpoint } from "@sunfathom/planner";
import { strToU8, Zip, ZipDeflate } from "fflate";

/** A file of a package. */
export interface PackageFile {
  path: string;
  content: string;
}

/** The same time in every file, so that the same paper gives the same bytes: the first that a zip can hold. */
const MTIME = new Date(1980, 0, 1);

/** Files as a zip, in chunks as they come: one file in memory at a time, and between two of them a look whether anybody waits. */
export function* zipFiles(files: Iterable<PackageFile>): Generator<Uint8Array> {
  const ready: Uint8Array[] = [];
  const zip = new Zip((error, chunk) => {
    if (error) throw error;
    ready.push(chunk);
  });
  for (const { path, content } of files) {
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
