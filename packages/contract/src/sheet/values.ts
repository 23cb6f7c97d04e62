// What sheets come in, the default first, and what a template is made of. Plain data, without zod.

export const slateFormats = ["pdf", "svg", "png"] as const;
export const cuttingTemplateFormats = ["pdf", "svg"] as const;

export const gradeFormats = ["clf", "cdl"] as const;

export const contactEdges = ["bottom", "top", "left", "right", "none"] as const;

/** Sheets that fit on a page beside what is said of them. */
export const sheetLimits_mm = { min: 7, max: 120 } as const;
/** What tape needs on each side of an opening: from memory. */
export const leastTape_mm = 1;
