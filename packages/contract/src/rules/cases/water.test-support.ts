import type { RuleCases } from "./rule-cases.test-support.js";

const card = { depth_m: 3, red: 0.2, green: 0.3, blue: 0.4 };

const samples = [
  { wavelength_nm: 450, kd_per_m: 0.06 },
  { wavelength_nm: 650, kd_per_m: 0.38 },
];

/** Of the rules on the water. */
export const waterCases = {
  one_water_basis: {
    passes: [{ water_type: "IB" }, { kd_samples: samples }],
    refuses: [
      [{}, [""]],
      [{ water_type: "IB", kd_samples: samples }, ["/water_type", "/kd_samples"]],
    ],
  },
  water_companions: {
    passes: [
      { water_type: "IB" },
      { visibility_m: 20, water_hue: "blue" },
      { card_samples: [card, card], transfer_curve: "linear", locked_balance: true },
    ],
    refuses: [
      [{ visibility_m: 20 }, ["/visibility_m"]],
      [{ secchi_depth_m: 20 }, ["/secchi_depth_m"]],
      [{ card_samples: [card, card] }, ["/card_samples"]],
      [{ water_type: "IB", water_hue: "blue" }, ["/water_hue"]],
      [
        { water_type: "IB", transfer_curve: "srgb", locked_exposure: true },
        ["/transfer_curve", "/locked_exposure"],
      ],
    ],
  },
  kd_samples_rising: {
    passes: [{ kd_samples: samples }, {}],
    refuses: [
      [{ kd_samples: [...samples].reverse() }, ["/kd_samples/1/wavelength_nm"]],
      [{ kd_samples: [...samples, ...samples.slice(1)] }, ["/kd_samples/2/wavelength_nm"]],
    ],
  },
  card_exposure_whole: {
    passes: [{ card_samples: [card, { ...card, iso: 200, shutter_s: 0.02, f_number: 4 }] }, {}],
    refuses: [[{ card_samples: [card, { ...card, shutter_s: 0.02 }] }, ["/card_samples/1/shutter_s"]]],
  },
  card_gains_whole: {
    passes: [{ card_samples: [card, { ...card, red_gain: 2, green_gain: 1, blue_gain: 1.5 }] }],
    refuses: [[{ card_samples: [{ ...card, red_gain: 2, blue_gain: 1 }] }, ["/card_samples/0/red_gain"]]],
  },
} satisfies RuleCases;
