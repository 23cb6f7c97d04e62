/** The eight points of the compass, from north through east. */
export type Compass<Text> = readonly [Text, Text, Text, Text, Text, Text, Text, Text];

/** The point that lies nearest to a direction in degrees from north through east. */
export const pointOf = <Text>(points: Compass<Text>, azimuth_deg: number): Text =>
  points[Math.round(azimuth_deg / 45) % points.length] ?? points[0];
