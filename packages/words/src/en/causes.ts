import type { LightCauses } from "@sunfathom/planner";
import type { CauseText } from "../answer-texts.js";
import type { Texts } from "../problems/texts.js";
import { lampCauses } from "./lamp-causes.js";

/** What causes doubt on light in water. */
export const causes: Texts<LightCauses, CauseText> = {
  ...lampCauses,
  water_type_resolution: () => ({
    text: "A water type is a wide class: this water may lie anywhere between its neighbours",
    how_to_shrink: "State visibility and colour of the water, or photograph a grey card at two depths.",
  }),
  kd_measurement: () => ({
    text: "Error of the measured diffuse attenuation",
    how_to_shrink: "Measure at more wavelengths and depths.",
  }),
  clarity_reading: () => ({
    text: "How well you judged the visibility, the distance at which things vanish",
    how_to_shrink: "Read it again with a marked line, or photograph a grey card at two depths.",
  }),
  beam_to_diffuse: () => ({
    text: "Visibility does not fix how fast daylight fades with depth",
    how_to_shrink: "Lower a Secchi disc, or photograph a grey card at two depths.",
  }),
  spectral_shape: () => ({
    text: "Two waters that look alike can still take different colours",
    how_to_shrink: "Photograph a grey card at two depths.",
  }),
  hue_name: () => ({
    text: "A word for a colour covers a range of waters",
    how_to_shrink: "Photograph a grey card at two depths.",
  }),
  scattering_per_water: () => perWater,
  chlorophyll_relation: () => ({
    text: "Waters with the same chlorophyll concentration differ in attenuation",
    how_to_shrink: "Lower a Secchi disc, or photograph a grey card at two depths.",
  }),
  card_noise: () => ({
    text: "Scatter of the card readings",
    how_to_shrink: "Photograph the card at more depths, with exposure and white balance locked.",
  }),
  water_scattering: (p) => (p.known_by === "sight" ? asSeen : perWater),
  path_scattering: () => ({
    text: "How much scattered light still arrives over a short path",
    how_to_shrink: "Photograph a card at arm's length and at the subject's distance, and compare.",
  }),
  sensor: () => ({
    text: "How much green and blue light this camera's red channel sees",
    how_to_shrink: "Photograph a colour chart at depth with this camera.",
  }),
  daylight_level: () => ({
    text: "How bright the sky is",
    how_to_shrink: "State the cloud cover, or measure with a light meter at the surface.",
  }),
  upright_share: () => ({
    text: "Which way the camera looks against the sun, and so how much light from above falls on the subject",
    how_to_shrink: "State where the sun is relative to the camera, or meter at depth.",
  }),
  light_field: () => ({
    text: "From which directions the light comes at depth, which the model simplifies",
    how_to_shrink: "Meter at depth.",
  }),
  reference_sun: () => ({
    text: "Which sun the attenuation of this water was measured under",
    how_to_shrink: "On the day, measure attenuation or photograph a grey card at two depths.",
  }),
  overhead: () => ({
    text: "How much daylight comes in under what lies overhead",
    how_to_shrink:
      "Meter a grey card there and in the open, and give their ratio; under ice, give its thickness and the snow's.",
  }),
  sea_floor: () => ({
    text: "How pale the bottom is",
    how_to_shrink: "State what the bottom is and how deep it is, or give its reflectance.",
  }),
  filter_edge: () => ({
    text: "Which colours this filter really takes: the model goes by its kind",
    how_to_shrink: "Photograph a grey card in daylight with and without it, or give its curve.",
  }),
  filter_width: () => ({
    text: "How much of the neighbouring colours this filter takes: the model goes by its kind",
    how_to_shrink: "Photograph a grey card in daylight with and without it, or give its curve.",
  }),
  filter_density: () => ({
    text: "How dense this filter is: pictures of a card tell it only so well",
    how_to_shrink: "Give the filter's curve.",
  }),
  full_well: () => ({
    text: "How many photons the sensor can hold per pixel",
    how_to_shrink: "Nothing a diver can do: it differs between cameras.",
  }),
};

const perWater: CauseText = {
  text: "How hazy this water is",
  how_to_shrink: "Say how far you can see in it.",
};

const asSeen: CauseText = {
  text: "How far you can really see, which gives the scattering",
  how_to_shrink: "Measure the visibility along a line.",
};
