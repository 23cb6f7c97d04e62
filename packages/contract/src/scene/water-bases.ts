/** A way to describe the water: its field, and the fields that go with it. */
export interface WaterBasisEntry {
  field: string;
  /** Fields that it cannot do without. */
  needs: readonly string[];
  /** Further fields that say something beside it, and nothing without it. */
  takes: readonly string[];
  /** A list, with which a scene does not fit a query string. */
  isList: boolean;
}

/** Every way to describe the water. A scene takes exactly one; another way is one more entry here. */
export const waterBases = [
  { field: "water_type", needs: [], takes: [], isList: false },
  { field: "chlorophyll_mg_m3", needs: [], takes: [], isList: false },
  { field: "secchi_depth_m", needs: ["water_hue"], takes: [], isList: false },
  { field: "visibility_m", needs: ["water_hue"], takes: [], isList: false },
  { field: "kd_samples", needs: [], takes: [], isList: true },
  {
    field: "card_samples",

    needs: ["transfer_curve"],
    takes: ["locked_exposure", "locked_balance"],
    isList: true,
  },
] as const satisfies readonly WaterBasisEntry[];

/** Fields that mean nothing without a list, so that they need POST like the list itself. */
export const fieldsBesideLists: readonly string[] = waterBases.flatMap(({ isList, needs, takes }) =>
  isList ? [...needs, ...takes] : [],
);
