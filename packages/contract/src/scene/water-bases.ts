/** A way to describe the water: its field, words for whoever gave none, and the fields that go with it. */
export interface WaterBasisEntry {
  field: string;
  what: string;
  /** Fields that it cannot do without. */
  needs: readonly string[];
  /** Further fields that say something beside it, and nothing without it. */
  takes: readonly string[];
  /** A list, with which a scene does not fit a query string. */
  isList: boolean;
}

/** Every way to describe the water. A scene takes exactly one; another way is one more entry here. */
export const waterBases = [
  { field: "water_type", what: "optical type by Jerlov", needs: [], takes: [], isList: false },
  { field: "chlorophyll_mg_m3", what: "pigment of the plankton", needs: [], takes: [], isList: false },
  { field: "secchi_depth_m", what: "with water_hue", needs: ["water_hue"], takes: [], isList: false },
  { field: "visibility_m", what: "with water_hue", needs: ["water_hue"], takes: [], isList: false },
  { field: "kd_samples", what: "measured attenuation", needs: [], takes: [], isList: true },
  {
    field: "card_samples",
    what: "a grey card at several depths, with transfer_curve",
    needs: ["transfer_curve"],
    takes: ["locked_exposure", "locked_balance"],
    isList: true,
  },
] as const satisfies readonly WaterBasisEntry[];

/** Fields that mean nothing without a list, so that they need POST like the list itself. */
export const fieldsBesideLists: readonly string[] = waterBases.flatMap(({ isList, needs, takes }) =>
  isList ? [...needs, ...takes] : [],
);
