export interface WaterTypeInfo {
  water_type: string;
  /** In a diver's words. */
  description: string;
  edition: string;
  wavelengths_nm: number[];
  kd_per_m: number[];
  sources: string[];
}

export interface FilterKindInfo {
  filter_kind: string;
  description: string;
  /** Where it belongs. */
  use: "lens" | "lamp" | "lens_or_lamp";
  /** Density of the glass outside the absorption band. */
  base_density: number;
  /** Least transmittance that remains inside the band however dense the filter, 0 to 1. */
  leakage: number;
  /** The shape is a stated assumption, as no standard publishes one. */
  shape_assumed: boolean;
  wavelengths_nm: number[];
  /** Density per unit of nominal density, 0 to 1. */
  density_shape: number[];
}

export interface ModelInfo {
  id: string;
  what: string;
  kind: "table" | "formula" | "assumption";
  source: string;
  domain: string;
  known_weaknesses: string;
}
