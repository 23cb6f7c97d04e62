import type { RedInPostTexts } from "../picture-texts.js";
import { dialShutter, settings } from "./dial.js";
import { filterName } from "./filter-name.js";
import { capital, depth, neutral, shown, stops } from "./format.js";

/** Wie viel Mal so viel: Zehntel nur unter 3. */
const times = (count: number): string =>
  `${shown(count, count < 2.95 && Math.round(10 * count) % 10 > 0 ? 1 : 0)}-mal`;

const quality: RedInPostTexts["quality"] = {
  excellent: "Sauber",
  acceptable: "Körnig",
  poor: "Sehr körnig",
  gone: "Rauschen, kein Rot",
};
const clipped = "Weiß frisst aus";
const without = "Ohne Filter";
const setFor = (whose: "no_filter" | "filter"): string =>
  `eingestellt für das Bild ${whose === "filter" ? "mit" : "ohne"} Filter`;

const exposed: (p: { off_by_stops: number }) => string = ({ off_by_stops }) =>
  Math.abs(off_by_stops) < 1 / 6
    ? "richtig belichtet"
    : `${stops(Math.abs(off_by_stops))} zu ${off_by_stops < 0 ? "dunkel" : "hell"}`;
const signal: (p: { red_signal_to_noise: number }) => string = ({ red_signal_to_noise }) =>
  red_signal_to_noise < 0.95
    ? "Rot schwächer als sein Rauschen"
    : red_signal_to_noise < 1.05
      ? "Rot so stark wie sein Rauschen"
      : `Rot ${times(red_signal_to_noise)} so stark wie sein Rauschen`;

export const redInPost: RedInPostTexts = {
  headline: ({ verdict, cleaner_by, depth_m }, u) =>
    ({
      gone: `In ${depth(depth_m, u)} gibt es kein Rot mehr, das sich nachträglich zurückholen lässt`,
      clean_without: `In ${depth(depth_m, u)} lässt sich Rot nachträglich zurückholen`,
      cleaner_through_filter: `In ${depth(depth_m, u)} rauscht hochgezogenes Rot ${times(cleaner_by)} so stark`,
      alike: `In ${depth(depth_m, u)} macht ein Filter das Rot nicht sauberer`,
    })[verdict],
  why: {
    gone: "Das Wasser hat das Rot genommen, bevor die Kamera es aufzeichnen konnte. Anheben verstärkt nur Rauschen, mit Filter wie ohne.",
    clean_without:
      "Hier ist genug Rot im Licht. Nachträglich angehoben bleibt es sauber; ein Filter kostet Licht und bringt wenig.",
    cleaner_through_filter:
      "Wer Rot nachträglich anhebt, hebt sein Rauschen mit an. Ein Filter hält stattdessen Grün und Blau zurück: Du kannst mehr Licht auf den Sensor lassen, und Rot bekommt davon mehr ab.",
    alike:
      "Durch den Filter wird Rot kaum besser aufgezeichnet. Mit ihm oder ohne ihn verstärkt das Anheben auch das Rauschen.",
  },
  truth: "So sieht es aus",
  reading:
    "Oben ein rotes Feld, unten eine Weißkarte; nach rechts fällt das Licht um 3 Blendenstufen. Jedes Bild darunter ist angehoben, bis dieses Rot und dieses Weiß stimmen. Achte auf Korn, auf Stufen und auf das Weiß.",
  settings_for: ({ settings_for, settings: set, neutral_density }) =>
    `${capital(setFor(settings_for))}: ${settings(set)}, ${dialShutter(set.shutter_s)}${neutral_density === undefined ? "" : `, durch ${neutral(neutral_density)}`}`,
  without,
  filtered: ({ filter, is_advised }) =>
    `${capital(filterName(filter, "wer"))}${is_advised ? "" : ", hier nicht empfohlen"}`,
  quality,
  clipped,
  caption: (way) =>
    `${capital(exposed(way))}${way.is_clipped ? "" : `; ${signal(way)}, in ${shown(way.red_steps)} Helligkeitsstufen`}`,
  squares: ({ bits }) =>
    `Jedes Kästchen ist ein Pixel, wie du es ansiehst, vergrößert. Das Rauschen ist zufällig gezeichnet, so stark wie berechnet; die Stufen sind die einer Aufnahme mit ${bits} Bit.`,
  description: ({ depth_m, filter, ways }, u) =>
    [
      `Ein rotes Feld und eine Weißkarte in ${depth(depth_m, u)}, auf vier Arten aufgenommen und angehoben, bis Rot und Weiß stimmen.`,
      ...ways.map((way) => {
        const name = way.filtered ? capital(filterName(filter, "wer")) : without;
        return `${name}, ${setFor(way.settings_for)}: ${exposed(way)}; ${way.is_clipped ? clipped : signal(way)}.`;
      }),
    ].join(" "),
};
