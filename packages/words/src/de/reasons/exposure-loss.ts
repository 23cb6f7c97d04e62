import type { ExposureLossReasons } from "@sunfathom/planner";
import type { Texts } from "../../problems/texts.js";
import { dialFNumber, settings } from "../dial.js";
import { depth, distance, neutral, percent, plural, shown, stops } from "../format.js";

/** Gründe zum Lichtverlust. */
export const exposureLossReasons: Texts<ExposureLossReasons, string> = {
  too_bright: (p, u) =>
    `In ${depth(p.depth_m, u)} ist es selbst mit der knappsten Belichtung, die deine Grenzen zulassen (${settings(p)}), um ${stops(p.excess_stops)} zu hell. Nimm ${neutral(p.density)}; mehr ISO würde es schlimmer machen.`,
  aperture_can_close: (p) =>
    `Du könntest stattdessen auf f/${dialFNumber(p.f_number)} abblenden: Deine Vorgabe hält die Blende weiter offen als nötig.`,
  too_dark: (p, u) =>
    `In ${depth(p.depth_m, u)} ist es selbst mit ${settings(p)} um ${stops(p.shortfall_stops)} zu dunkel. Mehr Licht gibt es nur bei einem Tauchgang mit höherer Sonne, in flacherem Wasser, mit einer Videolampe oder mit längerer Belichtungszeit.`,
  exposure_fits: (p, u) =>
    `In ${depth(p.depth_m, u)} ergibt die Messung auf das Motiv EV ${shown(p.ev, 1)} bei ISO 100, also ${settings(p)}.`,
  levels_apart: (p, u) =>
    p.stops > 0
      ? `In ${depth(p.depth_m, u)} belichtet ein Belichtungsmesser, der das Bild mittelt, um ${stops(p.stops)} knapper, als das Motiv es braucht, weil Wasser und Grund heller sind. Belichte auf das Motiv, oder bleib bei der Messung, wenn dir das Blau im Hintergrund wichtiger ist.`
      : `In ${depth(p.depth_m, u)} belichtet ein Belichtungsmesser, der das Bild mittelt, um ${stops(-p.stops)} reichlicher, als das Motiv es braucht, weil Wasser und Grund dunkler sind. Belichte auf das Motiv, sonst frisst es aus.`,
  auto_exposes_picture: (p, u) =>
    p.stops > 0
      ? `Die Belichtungsautomatik misst das ganze Bild. In ${depth(p.depth_m, u)} wird das Motiv dadurch um ${stops(p.stops)} zu dunkel, weil Wasser und Grund heller sind. Stell die Belichtungskorrektur auf +${stops(p.stops)}, oder speichere die Belichtung auf dem Motiv.`
      : `Die Belichtungsautomatik misst das ganze Bild. In ${depth(p.depth_m, u)} wird das Motiv dadurch um ${stops(-p.stops)} zu hell, weil Wasser und Grund dunkler sind. Stell die Belichtungskorrektur auf -${stops(-p.stops)}, oder speichere die Belichtung auf dem Motiv.`,
  filter_makes_it_darker: (p) =>
    `Der Filter auf dem Objektiv kostet von dem Licht, das fehlt, ${stops(p.stops)}: Nimm ihn ab.`,
  any_filter_would_worsen: () =>
    "Ein Filter auf dem Objektiv würde noch mehr Licht kosten und das Bild noch dunkler machen.",
  port_takes: (p) =>
    `Der Port kostet ${stops(p.stops)}, egal welche Form er hat: Das Licht läuft beim Austritt aus dem Wasser auseinander, und die Scheibe spiegelt ein wenig. Ein Belichtungsmesser im Gehäuse misst das schon mit.`,
  water_takes_most: (p, u) =>
    `Von der Oberfläche bis zum Sensor in ${depth(p.depth_m, u)} verliert das Licht ${stops(p.total_stops)}; ${stops(p.depth_stops)} davon kostet das Wasser darüber.`,
  haze_is_the_limit: (p, u) =>
    `Durch ${distance(p.distance_m, u)} dieses Wassers ${plural(Math.round(p.contrast_percent), { one: "bleibt", other: "bleiben" })} ${percent(p.contrast_percent)} des Kontrasts: Hier ist das trübe Wasser die Grenze, nicht die Farbe. Geh näher heran, bevor du irgendetwas anderes änderst.`,
};
