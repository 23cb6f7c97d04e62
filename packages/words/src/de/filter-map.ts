import type { FilterMapTexts } from "../picture-texts.js";
import { filterName, kindName } from "./filter-name.js";
import { between, capital, densityOf, depth, depthNumber, shown } from "./format.js";

export const filterMap: FilterMapTexts = {
  headline: ({ filter, is_advised, min_depth_m, max_depth_m }, u) =>
    is_advised
      ? `${capital(between(min_depth_m, max_depth_m, u))} passt am besten ${filterName(filter, "wer")}`
      : `${capital(between(min_depth_m, max_depth_m, u))} lohnt sich kein Filter`,
  reading:
    "Jede Zahl ist ein Farbfehler: wie weit Farben in dieser Tiefe hinter einem Filter dieser Dichte danebenliegen. Etwa 1 gilt uns als das Kleinste, was man sieht. Je dunkler das Feld, desto größer der Fehler.",
  across: ({ kind }) =>
    `${kind === "none" ? "Filter" : kindName(kind)}: Dichte (0,3 kostet etwa eine Blendenstufe)`,
  none: "ohne",
  at_density: ({ density }) => densityOf(density),
  at_depth: ({ depth_m }, u) => depth(depth_m, u),
  error: ({ delta_e00 }) => shown(delta_e00),
  band: ({ from, to }) =>
    from === to
      ? `Umrahmt: empfohlen, Dichte ${densityOf(from)}`
      : `Umrahmt: empfohlen; zwischen den Dichten ${densityOf(from)} und ${densityOf(to)} siehst du keinen Unterschied`,
  no_band: "Umrahmt ist keine Dichte: Hier wird keine empfohlen.",
  dive: ({ min_depth_m, max_depth_m }, u) =>
    depthNumber(min_depth_m, u) === depthNumber(max_depth_m, u)
      ? `Du filmst in ${depth(max_depth_m, u)}`
      : `Du filmst von ${depthNumber(min_depth_m, u)} bis ${depth(max_depth_m, u)}`,
  description: ({ kind, densities, depths_m, delta_e00, filter, is_advised, max_depth_m }, u) => {
    const deepest = delta_e00[depths_m.length - 1] ?? [];
    const least = Math.min(...deepest);
    return [
      `Farbfehler hinter Filtern (${kind === "none" ? "Filter" : kindName(kind)}) der Dichten 0 bis ${densityOf(densities[densities.length - 1] ?? 0)}, von nahe der Oberfläche bis ${depth(max_depth_m, u)}.`,
      `In ${depth(max_depth_m, u)} beträgt der Fehler ohne Filter ${shown(deepest[0] ?? 0)} und bestenfalls ${shown(least)}, bei Dichte ${densityOf(densities[deepest.indexOf(least)] ?? 0)}.`,
      is_advised
        ? `Für alle gefilmten Tiefen empfohlen: ${filterName(filter, "wer")}.`
        : "Empfohlen wird kein Filter.",
    ].join(" ");
  },
};
