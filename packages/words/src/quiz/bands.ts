/** Wavelengths in nm that questions name by their colour. */
export type Band = "650" | "600" | "575" | "525" | "475" | "425";
