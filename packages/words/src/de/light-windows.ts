import type { LightWindowReasons, WindowAim } from "@sunfathom/planner";
import type { Texts } from "../problems/texts.js";
import { percent, shown, stops } from "./format.js";

const AIMS: Readonly<Record<WindowAim, string>> = {
  natural_colour: "natürlicher Farbe und dem Tageslicht, das von oben auf das Motiv fällt",
  sunlit_background: "Farbe und dem Licht des Freiwassers hinter dem Motiv",
  lamps_lead: "Farbe und danach, wie weit deine Videolampen das Tageslicht auf dem Motiv übertreffen",
};

/** Was den Himmel bedeckt, in Achteln. */
const clouds = (oktas: number): string => {
  if (oktas === 0) return " an wolkenlosem Himmel";
  if (oktas === 8) return " hinter einer geschlossenen Wolkendecke";
  return oktas === 1 ? ", bei einem Achtel Bewölkung" : `, bei ${shown(oktas)} Achteln Bewölkung`;
};

const sky = (p: { elevation_deg: number; cloud_oktas: number }): string =>
  `Die Sonne steht ${shown(p.elevation_deg)} Grad hoch${clouds(p.cloud_oktas)}`;

const colour = (delta_e00: number): string =>
  Math.abs(delta_e00) < 0.05
    ? "derselbe Farbfehler"
    : `ein um ${shown(Math.abs(delta_e00), 1)} ${delta_e00 > 0 ? "größerer" : "kleinerer"} Farbfehler`;

const light = (less_stops: number): string =>
  Math.abs(less_stops) < 1 / 6
    ? "etwa gleich viel Licht"
    : `${stops(Math.abs(less_stops))} ${less_stops > 0 ? "weniger" : "mehr"} von dem Licht, auf das es dir ankommt`;

/** Warum Lichtfenster stehen, wo sie stehen. */
export const lightWindowReasons: Texts<LightWindowReasons, string> = {
  window_best: (p) => `Das beste des Tages: ${sky(p)}.`,
  window_only: (p) => `Das einzige Fenster des Tages mit genug Sonne: ${sky(p)}.`,
  window_behind: (p) =>
    `Gegenüber dem besten des Tages: ${colour(p.more_delta_e00)} und ${light(p.less_stops)}.`,
  window_as_good: (p) =>
    `So gut wie das beste des Tages, soweit man das unterscheiden kann: ${colour(p.more_delta_e00)} und ${light(p.less_stops)}.`,
  windows_ranked: (p) =>
    `Die Fenster sind gereiht nach ${AIMS[p.aim]}. Eine Blendenstufe Licht wiegt so viel wie ${percent(p.percent_per_stop)} des Farbfehlers.`,
  windows_sky_assumed: (p) =>
    `An ${p.days} von ${p.of_days} ${p.of_days === 1 ? "Tag" : "Tagen"} fehlt für manche Stunden die Vorhersage: Dort ist ein klarer Himmel angenommen. Schick deine Vorhersage, wenn der Tag näher ist.`,
  windows_forecast_unused: (p) =>
    `${p.entries} ${p.entries === 1 ? "Eintrag" : "Einträge"} der Vorhersage ${p.entries === 1 ? "betrifft" : "betreffen"} kein Fenster: ein anderer Tag, eine Stunde außerhalb der Öffnungszeit oder ein Tag, dessen Stunden alle angegeben sind.`,
  windows_sun_too_low: (p) =>
    `${p.windows} ${p.windows === 1 ? "Fenster ist" : "Fenster sind"} weggelassen: Die Sonne steht dann zeitweise unter ${shown(p.min_elevation_deg)} Grad, und dort gilt dieses Modell nicht.`,
  windows_interpolated: (p) =>
    `Die Werte sind für feste Sonnenhöhen gerechnet und dazwischen geradlinig verbunden: Der Farbfehler stimmt auf ${shown(p.delta_e00, 2)} genau, das Licht auf ${shown(p.stops, 1)} Blendenstufen.`,
  windows_spread_shared: () =>
    "Wie sicher die Werte sind, ist für das beste Fenster gerechnet und für die anderen übernommen.",
};
