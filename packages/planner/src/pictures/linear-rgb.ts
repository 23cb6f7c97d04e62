/** Linear red, green and blue of ITU-R BT.709, which sRGB shares; beyond 0 to 1 where a screen cannot show the colour. */
export type LinearRgb = readonly [red: number, green: number, blue: number];
