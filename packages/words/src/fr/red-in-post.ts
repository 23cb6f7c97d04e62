import type { RedInPostTexts } from "../picture-texts.js";
import { timed } from "./dial.js";
import { filterName, theFilter } from "./filter-name.js";
import { capital, depth, neutral, shown, stops } from "./format.js";

/** Combien de fois : le dixième ne compte qu’en dessous de 3. */
const times = (count: number): string =>
  `${shown(count, count < 2.95 && Math.round(10 * count) % 10 > 0 ? 1 : 0)} fois`;

const quality: RedInPostTexts["quality"] = {
  excellent: "Propre",
  acceptable: "Granuleux",
  poor: "Très granuleux",
  gone: "Du bruit, pas de rouge",
};
const clipped = "Le blanc est brûlé";
const without = "Sans filtre";
const setFor = (whose: "no_filter" | "filter"): string =>
  `réglages pour l’image ${whose === "filter" ? "avec" : "sans"} filtre`;

const exposed: (p: { off_by_stops: number }) => string = ({ off_by_stops }) =>
  Math.abs(off_by_stops) < 1 / 6
    ? "bien exposée"
    : `${off_by_stops < 0 ? "sous-exposée" : "surexposée"} de ${stops(Math.abs(off_by_stops))}`;
const signal: (p: { red_signal_to_noise: number }) => string = ({ red_signal_to_noise }) =>
  red_signal_to_noise < 0.95
    ? "le rouge est plus faible que son bruit"
    : red_signal_to_noise < 1.05
      ? "le rouge est aussi fort que son bruit"
      : `le rouge vaut ${times(red_signal_to_noise)} son bruit`;

export const redInPost: RedInPostTexts = {
  headline: ({ verdict, cleaner_by, depth_m }, u) =>
    ({
      gone: `À ${depth(depth_m, u)}, il n’y a plus de rouge à rattraper après coup`,
      clean_without: `À ${depth(depth_m, u)}, le rouge se rattrape après coup`,
      cleaner_through_filter: `À ${depth(depth_m, u)}, le rouge ajouté après coup a ${times(cleaner_by)} plus de bruit`,
      alike: `À ${depth(depth_m, u)}, un filtre ne rend pas le rouge plus propre`,
    })[verdict],
  why: {
    gone: "L’eau a pris le rouge avant que la caméra puisse l’enregistrer. Le pousser n’amplifie que le bruit, avec filtre ou sans.",
    clean_without:
      "Ici, la lumière a encore assez de rouge. Poussé après coup, il reste propre ; un filtre coûte de la lumière et apporte peu.",
    cleaner_through_filter:
      "Pousser le rouge après coup amplifie aussi son bruit. Un filtre retient plutôt le vert et le bleu : vous pouvez exposer davantage, et le rouge en reçoit davantage.",
    alike:
      "À travers le filtre, le rouge n’est guère mieux enregistré. Avec lui ou sans lui, le pousser amplifie aussi le bruit.",
  },
  truth: "Tel qu’il est",
  reading:
    "En haut, une plage rouge ; en bas, une charte blanche ; vers la droite, la lumière baisse de 3 IL. Chaque image du dessous est poussée jusqu’à ce que ce rouge et ce blanc soient justes. Regardez le grain, les paliers de ton et le blanc.",
  settings_for: ({ settings_for, settings: set, neutral_density }) =>
    `${capital(setFor(settings_for))} : ${timed(set)}${neutral_density === undefined ? "" : `, avec ${neutral(neutral_density)}`}`,
  without,
  filtered: ({ filter, is_advised }) => `Avec ${theFilter(filter)}${is_advised ? "" : ", non conseillé ici"}`,
  quality,
  clipped,
  caption: (way) =>
    `${capital(exposed(way))}${way.is_clipped ? "" : ` ; ${signal(way)}, en ${shown(way.red_steps)} paliers de ton`}`,
  squares: ({ bits }) =>
    `Chaque carré est un pixel tel qu’on le regarde, agrandi. Le bruit est tiré au hasard, aussi fort que calculé ; les paliers sont ceux d’un enregistrement sur ${bits} bits.`,
  description: ({ depth_m, filter, ways }, u) =>
    [
      `Une plage rouge et une charte blanche à ${depth(depth_m, u)}, enregistrées de quatre façons et poussées jusqu’à ce que le rouge et le blanc soient justes.`,
      ...ways.map((way) => {
        const name = way.filtered ? capital(filterName(filter)) : without;
        return `${name}, ${setFor(way.settings_for)} : ${exposed(way)} ; ${way.is_clipped ? clipped.toLowerCase() : signal(way)}.`;
      }),
    ].join(" "),
};
