import type { Item } from "../item/item.js";
import type { PackageOptions } from "../qti/package-files.js";
import { packageZip } from "../qti/package-zip.js";
import { type PracticeOptions, practiceZip } from "../scorm/practice-files.js";

/** What a paper can be packed as. */
export const PACKAGE_FORMATS = ["qti", "scorm_1_2"] as const;

export type Packing = ({ format: "qti" } & PackageOptions) | ({ format: "scorm_1_2" } & PracticeOptions);

/** A paper as a zip, in chunks as they come. */
export const zipOf = (items: readonly Item[], packing: Packing): Generator<Uint8Array> =>
  packing.format === "qti" ? packageZip(items, packing) : practiceZip(items, packing);
