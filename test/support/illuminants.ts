/** CIE illuminants as published, read for tests; the model itself holds two of them. */
import { column, readTable } from "./tables.js";

export type PublishedIlluminant = "A" | "D50" | "D55" | "D65" | "D75";

const rows = readTable("cie_illuminants_5nm");

/** Relative power from 380 to 780 nm, each 5 nm (CIE 15). */
export function publishedIlluminant(name: PublishedIlluminant): Float64Array {
  const own = rows.filter(({ illuminant, wavelength_nm }) => {
    const nm = Number(wavelength_nm);
    return illuminant === name && nm >= 380 && nm <= 780;
  });
  return Float64Array.from(column(own, "relative_power"));
}
