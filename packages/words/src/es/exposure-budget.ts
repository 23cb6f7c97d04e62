import type { BudgetAtDepth, Estimate } from "@sunfathom/planner";
import type { ExposureBudgetTexts } from "../picture-texts.js";
import { dialShutter, settings } from "./dial.js";
import { depth, stops } from "./format.js";

/** En tercios; lo que es menos, como tal. */
const likely = ({ likely: value }: Estimate): string =>
  value < -1 / 6 ? `gana ${stops(-value)}` : stops(value);

const verdict = ({ verdict: of, shortfall_stops = 0, excess_stops = 0 }: BudgetAtDepth): string =>
  ({
    fits: "basta",
    too_dark: `aún con ${stops(shortfall_stops)} de luz de menos`,
    too_bright: `aún con ${stops(excess_stops)} de luz de más`,
  })[of];

export const exposureBudget: ExposureBudgetTexts = {
  headline: ({ depths }, u) => {
    const deepest = depths[depths.length - 1];
    return deepest?.total === undefined
      ? "Dónde se pierde luz de camino al sensor"
      : `A ${depth(deepest.depth_m, u)}, el camino hasta el sensor cuesta ${stops(deepest.total.likely)} de luz del día`;
  },
  reading: "Cada barra empieza donde termina la de arriba. Con cada paso queda la mitad de la luz.",
  losses: {
    surface: "En la superficie",
    depth: "Al bajar",
    upright: "Porque el motivo le mira a usted, no al cielo",
    distance: "Del motivo a la cámara",
    port: "En el puerto",
    lens_filter: "En el filtro del objetivo",
  },
  total: "En total",
  no_daylight: "En esta inmersión no hay luz del día: cuenta el camino del motivo al sensor.",
  at_depth: ({ depth_m }, u) => depth(depth_m, u),
  stops: likely,
  set: (p, u) => `A ${depth(p.depth_m, u)}: ${settings(p)}, ${dialShutter(p.shutter_s)}; ${verdict(p)}.`,
  description: ({ depths }, u) =>
    depths
      .map((p) => {
        const told = p.losses.map(({ at, stops: lost }) => `${PLACES[at]} ${likely(lost)}`);
        return `Luz perdida a ${depth(p.depth_m, u)}: ${told.join(", ")}${p.total ? `; en total ${stops(p.total.likely)}` : ""}. Ajuste ${settings(p)}; ${verdict(p)}.`;
      })
      .join(" "),
};

const PLACES = {
  surface: "superficie",
  depth: "bajada",
  upright: "motivo de frente",
  distance: "distancia",
  port: "puerto",
  lens_filter: "filtro",
} as const;
