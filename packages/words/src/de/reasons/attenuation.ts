import type { AttenuationReasons } from "@sunfathom/planner";
import type { Texts } from "../../problems/texts.js";
import { depth, shown, stops } from "../format.js";

/** Gründe zur Attenuation. */
export const attenuationReasons: Texts<AttenuationReasons, string> = {
  red_goes_first: (p, u) =>
    `In ${depth(p.depth_m, u)} hat das Wasser dem Rotkanal ${stops(p.red_stops)} genommen, dem grünen Kanal ${stops(p.green_stops)} und dem blauen ${stops(p.blue_stops)}.`,
  no_daylight_relative: () =>
    "Hier gibt es kein Tageslicht; die Verluste gelten deshalb für einen gleichmäßigen Himmel von 5500 K. Eine Beleuchtungsstärke gibt es nicht.",
  sun_path: (p) =>
    `Schräg einfallende Sonne verlängert den Weg durchs Wasser: Der mittlere Kosinus des Lichtwegs ist ${shown(p.mu0, 2)}, in den Tabellen 0,90.`,
};
