// How pictures can be asked for. Plain data, without zod.

export const pictureFormats = ["svg", "png"] as const;
export type PictureFormat = (typeof pictureFormats)[number];

export const pictureThemes = ["light", "dark", "print"] as const;

/** What a picture is drawn like where nothing else is said. */
export const pictureDefaults = { format: "svg", width_px: 800, theme: "light" } as const;

/** Widths that pictures are laid out for, px. */
export const pictureWidths_px = { min: 320, max: 1600 } as const;
