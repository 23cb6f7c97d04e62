import type { WaterCause } from "@sunfathom/optics";

/** In plain words, what each cause of doubt about the water's attenuation is and what would shrink it. */
export const WATER_CAUSES: Record<WaterCause, { text: string; how_to_shrink: string }> = {
  water_type_resolution: {
    text: "A water type is a wide class: this water may lie anywhere between its neighbours",
    how_to_shrink: "State visibility and colour of the water, or photograph a grey card at two depths.",
  },
  kd_measurement: {
    text: "Error of the measured diffuse attenuation",
    how_to_shrink: "Measure at more wavelengths and depths.",
  },
  clarity_reading: {
    text: "How well the distance at which things vanish was read",
    how_to_shrink: "Read it again with a marked line, or photograph a grey card at two depths.",
  },
  beam_to_diffuse: {
    text: "How far one sees does not fix how fast daylight fades with depth",
    how_to_shrink: "Lower a Secchi disc, or photograph a grey card at two depths.",
  },
  spectral_shape: {
    text: "Waters of one clarity and colour still differ in how they take each wavelength",
    how_to_shrink: "Photograph a grey card at two depths, or measure diffuse attenuation.",
  },
  hue_name: {
    text: "A colour word covers a stretch of waters",
    how_to_shrink: "Photograph a grey card at two depths.",
  },
  scattering_per_water: {
    text: "How strongly this water scatters, which attenuation alone does not fix",
    how_to_shrink: "State the horizontal visibility.",
  },
  chlorophyll_relation: {
    text: "Waters of one chlorophyll concentration differ in attenuation",
    how_to_shrink: "Lower a Secchi disc, or photograph a grey card at two depths.",
  },
  card_noise: {
    text: "Scatter of the card readings",
    how_to_shrink: "Photograph the card at more depths, with exposure and balance locked.",
  },
};
