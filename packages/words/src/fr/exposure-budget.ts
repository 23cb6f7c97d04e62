import type { BudgetAtDepth, Estimate } from "@sunfathom/planner";
import type { ExposureBudgetTexts } from "../picture-texts.js";
import { settings, timed } from "./dial.js";
import { depth, stops } from "./format.js";

/** En tiers ; ce qui est moindre, tel quel. */
const likely = ({ likely: value }: Estimate): string =>
  value < -1 / 6 ? `gagne ${stops(-value)}` : stops(value);

const verdict = ({ verdict: of, shortfall_stops = 0, excess_stops = 0 }: BudgetAtDepth): string =>
  ({
    fits: "cela suffit",
    too_dark: `il manque encore ${stops(shortfall_stops)}`,
    too_bright: `il y a encore ${stops(excess_stops)} de trop`,
  })[of];

export const exposureBudget: ExposureBudgetTexts = {
  headline: ({ depths }, u) => {
    const deepest = depths[depths.length - 1];
    return deepest?.total === undefined
      ? "Où la lumière se perd sur le chemin du capteur"
      : `À ${depth(deepest.depth_m, u)}, la lumière du jour perd ${stops(deepest.total.likely)} jusqu’au capteur`;
  },
  reading: "Chaque barre commence où finit celle du dessus. Chaque IL réduit la lumière de moitié.",
  losses: {
    surface: "À la surface",
    depth: "En descendant",
    upright: "Le sujet est tourné vers vous, pas vers le ciel",
    distance: "Du sujet à la caméra",
    port: "Au hublot",
    lens_filter: "Dans le filtre sur l’objectif",
  },
  total: "En tout",
  no_daylight:
    "Il n’y a pas de lumière du jour pendant cette plongée : seul compte le chemin du sujet au capteur.",
  at_depth: ({ depth_m }, u) => depth(depth_m, u),
  stops: likely,
  set: (p, u) => `À ${depth(p.depth_m, u)} : ${timed(p)} ; ${verdict(p)}.`,
  description: ({ depths }, u) =>
    depths
      .map((p) => {
        const told = p.losses.map(({ at, stops: lost }) => `${PLACES[at]} ${likely(lost)}`);
        return `Lumière perdue à ${depth(p.depth_m, u)} : ${told.join(", ")}${p.total ? ` ; en tout ${stops(p.total.likely)}` : ""}. Réglez sur ${settings(p)} ; ${verdict(p)}.`;
      })
      .join(" "),
};

const PLACES = {
  surface: "surface",
  depth: "descente",
  upright: "sujet de face",
  distance: "distance",
  port: "hublot",
  lens_filter: "filtre",
} as const;
