import type { RuleCases } from "./rule-cases.test-support.js";

const lamp = { flux_lm: 4000, distance_m: 0.8 };

/** Of the rules on lamps. */
export const lampsCases = {
  lamp_colour: {
    passes: [{ lamps: [{ ...lamp, led: "LED-B1" }] }, { lamp_cct_K: 5600 }],
    refuses: [
      [{ lamps: [lamp, { ...lamp, led: "LED-B1", cct_K: 5600 }] }, ["/lamps/1/led"]],
      [{ lamp_led: "LED-B1", lamp_cct_K: 5600 }, ["/lamp_led"]],
    ],
  },
  lamp_filter_pair: {
    passes: [{ lamps: [{ ...lamp, filter_kind: "blue", filter_density: 0.3 }] }, { lamps: [lamp] }],
    refuses: [
      [{ lamps: [{ ...lamp, filter_kind: "blue" }] }, ["/lamps/0/filter_kind"]],
      [{ lamp_filter_density: 0.3 }, ["/lamp_filter_density"]],
    ],
  },
  lamps_once: {
    passes: [{ lamps: [lamp] }, { lamp_flux_lm: 4000 }],
    refuses: [[{ lamps: [], lamp_flux_lm: 4000 }, ["/lamps"]]],
  },
  lamp_complete: {
    passes: [{ lamp_flux_lm: 4000, lamp_distance_m: 0.8 }, {}],
    refuses: [
      [{ lamp_flux_lm: 4000 }, ["/lamp_flux_lm"]],
      [{ lamp_count: 2 }, ["/lamp_count", "/lamp_count"]],
    ],
  },
  lead_distance_with_stops: {
    passes: [{ wanted_lead_stops: 3 }, { wanted_lead_stops: 3, wanted_lead_distance_m: 0.8 }, {}],
    refuses: [[{ wanted_lead_distance_m: 0.8 }, ["/wanted_lead_distance_m"]]],
  },
} satisfies RuleCases;
