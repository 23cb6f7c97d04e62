import { shown } from "./format.js";

/** Ways out where lamps and daylight fight. */
export const WAYS_OUT_EN = {
  lamps_off: (p: { cost_stops: number }) =>
    `Switch the lamps off and leave them on the rig; balance to daylight. Costs ${shown(p.cost_stops, 1)} stops on the subject.`,
  lamp_filter: (p: {
    red: number;
    green: number;
    blue: number;
    kind: string;
    density: number;
    is_seen: boolean;
  }) =>
    `Put a filter on each lamp that makes its light match daylight here: of ${shown(p.red * 100)} % red, ${shown(p.green * 100)} % green and ${shown(p.blue * 100)} % blue; the nearest of the plain kinds is ${p.kind} of density ${shown(p.density, 2)}${p.is_seen ? ", which still leaves a visible split" : ""}. Balance to daylight.`,
  balance_to_lamps: () =>
    "Balance to a card lit by the lamps: the subject looks right and everything that only daylight reaches takes on the colour of the water.",
  come_closer: (p: { distance_m: number }) =>
    `Bring the lamps to ${shown(p.distance_m, 2)} m from the subject and balance to them: they then outshine daylight.`,
} as const;
