// What sheets come in, the default first. Plain data, without zod.

export const slateFormats = ["pdf", "svg", "png"] as const;
