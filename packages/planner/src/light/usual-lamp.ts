/** A lamp to count in where none is given: what a wide beam at arm's length gives. From memory. */
export const USUAL_LAMP = { cct_K: 5600, beam_angle_deg: 100, distance_m: 0.8 } as const;
