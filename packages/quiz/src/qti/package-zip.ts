import type { Item } from "../item/item.js";
import { zipFiles } from "../zip/zip-files.js";
import { type PackageOptions, packageFiles } from "./package-files.js";

/** A content package as a zip, in chunks as they come. */
export const packageZip = (items: readonly Item[], options: PackageOptions): Generator<Uint8Array> =>
  zipFiles(packageFiles(items, options));
