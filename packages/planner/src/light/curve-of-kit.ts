/** Where the measured curve of one item of a kit stands in a scene: its field, and the way within it. */
export const curveOfKit = (index: number): [field: string, within: string[]] => [
  "kit",
  [String(index), "filter_transmittance"],
];
