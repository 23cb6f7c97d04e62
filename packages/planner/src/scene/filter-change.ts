/** How a filter is changed under water, if at all. */
export type FilterChange = "none" | "flip" | "clip_on";
