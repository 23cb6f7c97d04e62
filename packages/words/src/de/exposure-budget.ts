import type { BudgetAtDepth, Estimate } from "@sunfathom/planner";
import type { ExposureBudgetTexts } from "../picture-texts.js";
import { dialShutter, settings } from "./dial.js";
import { depth, stops } from "./format.js";

/** In Dritteln; was darunter liegt, als solches. */
const likely = ({ likely: value }: Estimate): string =>
  value < -1 / 6 ? `${stops(-value)} gewonnen` : stops(value);

const verdict = ({ verdict: of, shortfall_stops = 0, excess_stops = 0 }: BudgetAtDepth): string =>
  ({
    fits: "das passt",
    too_dark: `noch ${stops(shortfall_stops)} zu dunkel`,
    too_bright: `noch ${stops(excess_stops)} zu hell`,
  })[of];

export const exposureBudget: ExposureBudgetTexts = {
  headline: ({ depths }, u) => {
    const deepest = depths[depths.length - 1];
    return deepest?.total === undefined
      ? "Wo auf dem Weg zum Sensor Licht verloren geht"
      : `In ${depth(deepest.depth_m, u)} kostet der Weg zum Sensor ${stops(deepest.total.likely)} Tageslicht`;
  },
  reading: "Jeder Balken beginnt, wo der darüber endet. Mit jeder Blendenstufe bleibt halb so viel Licht.",
  losses: {
    surface: "An der Oberfläche",
    depth: "Auf dem Weg hinab",
    upright: "Weil das Motiv zu dir zeigt, nicht zum Himmel",
    distance: "Vom Motiv zur Kamera",
    port: "Am Port",
    lens_filter: "Im Filter auf dem Objektiv",
  },
  total: "Alles zusammen",
  no_daylight: "Auf diesem Tauchgang gibt es kein Tageslicht: Es zählt der Weg vom Motiv zum Sensor.",
  at_depth: ({ depth_m }, u) => depth(depth_m, u),
  stops: likely,
  set: (p, u) => `In ${depth(p.depth_m, u)}: ${settings(p)}, ${dialShutter(p.shutter_s)}; ${verdict(p)}.`,
  description: ({ depths }, u) =>
    depths
      .map((p) => {
        const told = p.losses.map(({ at, stops: lost }) => `${PLACES[at]} ${likely(lost)}`);
        return `Lichtverlust in ${depth(p.depth_m, u)}: ${told.join(", ")}${p.total ? `; zusammen ${stops(p.total.likely)}` : ""}. Stell ${settings(p)} ein; ${verdict(p)}.`;
      })
      .join(" "),
};

const PLACES = {
  surface: "Oberfläche",
  depth: "Weg hinab",
  upright: "Motiv aufrecht",
  distance: "Abstand",
  port: "Port",
  lens_filter: "Filter",
} as const;
