/** A way to describe the water: its field, and words for whoever gave none. Fields that go with it are rules of its own. */
export interface WaterBasisEntry {
  field: string;
  what: string;
}

/** Every way to describe the water. A scene takes exactly one; another way is one more line here. */
export const waterBases = [
  { field: "water_type", what: "optical type by Jerlov" },
  { field: "kd_samples", what: "measured attenuation" },
] as const satisfies readonly WaterBasisEntry[];
