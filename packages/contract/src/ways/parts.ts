import type { Ways } from "./way.js";

const filterOfLamp: Ways = {
  says: "filter_kind and filter_density go together.",
  ways: [
    { name: "FilteredLight", needs: ["filter_kind", "filter_density"], takes: [] },
    { name: "UnfilteredLight", needs: [], takes: [] },
  ],
};

const colourOfLamp: Ways = {
  says: "Give the colour of a light in one way: cct_K, or led.",
  ways: [
    { name: "LightByLed", needs: ["led"], takes: [] },
    { name: "LightByTemperature", needs: [], takes: ["cct_K"] },
  ],
};

/** What a lamp of a list gives in one of several ways. */
export const lampWays: readonly Ways[] = [filterOfLamp, colourOfLamp];

const filterItem = { item: ["lens_filter", "lamp_filter"] };

/** What a piece of a kit gives in one of several ways. */
export const kitItemWays: readonly Ways[] = [
  {
    says: "A filter needs filter_kind with filter_density or filter_stops, filter_transmittance, or filter_samples; a video light has none of them.",
    ways: [
      { name: "OwnedLight", needs: ["item"], takes: [], values: { item: ["lamp"] } },
      { name: "OwnedFilterBySamples", needs: ["item", "filter_samples"], takes: [], values: filterItem },
      { name: "OwnedFilterByCurve", needs: ["item", "filter_transmittance"], takes: [], values: filterItem },
      {
        name: "OwnedFilterByStops",
        needs: ["item", "filter_kind", "filter_stops"],
        takes: [],
        values: filterItem,
      },
      {
        name: "OwnedFilterOfDensity",
        needs: ["item", "filter_kind", "filter_density"],
        takes: [],
        values: filterItem,
      },
    ],
  },
];

/** What a picture of a grey card gives in one of several ways. */
export const cardSampleWays: readonly Ways[] = [
  {
    says: "iso, shutter_s and f_number go together.",
    ways: [
      { name: "CardWithExposure", needs: ["iso", "shutter_s", "f_number"], takes: [] },
      { name: "CardWithoutExposure", needs: [], takes: [] },
    ],
  },
  {
    says: "red_gain, green_gain and blue_gain go together.",
    ways: [
      { name: "CardWithGains", needs: ["red_gain", "green_gain", "blue_gain"], takes: [] },
      { name: "CardWithoutGains", needs: [], takes: [] },
    ],
  },
];
