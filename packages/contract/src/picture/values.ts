// How pictures can be asked for. Plain data, without zod.

export const pictureFormats = ["svg", "png"] as const;
export type PictureFormat = (typeof pictureFormats)[number];

export const pictureThemes = ["light", "dark", "print"] as const;

/** What a picture is drawn like where nothing else is said. */
export const pictureDefaults = { format: "svg", width_px: 800, theme: "light" } as const;
