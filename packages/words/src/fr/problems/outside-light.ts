import type { OutsideCode } from "@sunfathom/contract";
import type { LightRefusals } from "@sunfathom/planner";
import type { FieldText, OutsideText, Texts } from "../../problems/texts.js";
import { asGiven, either, shown, unit } from "../format.js";

/** Pourquoi le modèle n’a pas de réponse pour la lumière d’une scène. */
export const outsideLight: Texts<Pick<LightRefusals, OutsideCode & keyof LightRefusals>, OutsideText> = {
  instant_out_of_range: ({ year, first_year, last_year }) => {
    const given = year === undefined ? "n’est pas une date" : `tombe en ${year}`;
    return ofPlace(
      `La date ${given} ; le modèle connaît la position du soleil de ${first_year} à ${last_year}.`,
    );
  },
  local_time_malformed: ({ local_time, first_year, last_year }) =>
    ofPlace(
      `local_time « ${local_time} » n’est pas une date et une heure comme 2026-03-10T10:15, de ${first_year} à ${last_year}, sans décalage UTC.`,
    ),
  local_time_skipped: ({ local_time, time_zone }) =>
    ofPlace(
      `Les horloges de ${time_zone} n’ont jamais affiché ${local_time} : le changement d’heure l’a sautée. Donnez une heure avant ou après le changement.`,
    ),
  time_zone_unknown: ({ time_zone }) =>
    ofPlace(
      `time_zone « ${time_zone} » n’est pas un nom de la base de fuseaux horaires de l’IANA, comme Etc/GMT+9.`,
    ),
  secchi_depth_out_of_range: (range) => ofClarity("secchi_depth_m", range),
  visibility_out_of_range: (range) => ofClarity("visibility_m", range),
  water_hue_contradicts_measure: ({ measure, value_m, water_hue, min_m, max_m, fitting_hues }) => {
    return outside(
      `${measure} de ${asGiven(value_m)} ne va pas avec une eau ${hueName(water_hue)}, où l’on trouve de ${metres(min_m)} à ${metres(max_m)}. Une eau ${either(fitting_hues.map(hueName))} conviendrait.`,
      `de ${metres(min_m)} à ${metres(max_m)} avec water_hue ${water_hue}, ou water_hue ${either(fitting_hues)}`,
    );
  },
  card_samples_too_few: ({ span_m, least_span_m }) =>
    ofCards(
      `Les profondeurs de la charte ne sont distantes que de ${shown(span_m, 1)} m : prenez-en deux distantes d’au moins ${least_span_m} m.`,
    ),
  card_samples_malformed: (p) => {
    switch (p.case) {
      case "not_with_all":
        return ofCards(
          `${p.field} est indiqué pour ${p.given} des ${p.samples} prises de la charte ; indiquez-le pour toutes ou pour aucune.`,
        );
      case "clipped":
        return ofCards(
          `La prise de la charte à ${asGiven(p.depth_m)} m est brûlée (${asGiven(p.value)}) : refaites-la en exposant moins.`,
        );
      case "dark":
        return ofCards(
          `Un canal n’a rien enregistré de la charte à ${asGiven(p.depth_m)} m (${asGiven(p.value)}) ; exposez-la davantage, ou servez-vous d’une charte moins profonde.`,
        );
      case "balance_unlocked":
        return ofCards(
          "La balance des blancs a pu bouger entre les images : prenez du raw, verrouillez-la, ou indiquez red_gain, green_gain et blue_gain pour chacune.",
        );
      default:
        return ofCards(
          `La charte à ${asGiven(p.depth_m)} m a une profondeur, une exposition ou des gains impossibles.`,
        );
    }
  },
  card_samples_contradict: ({ rms_ln, worst_depth_m }) =>
    ofCards(
      `Aucune eau n’explique ces prises de la charte : elles s’écartent de l’eau la plus proche de ${shown(rms_ln, 2)} (logarithme népérien), surtout à ${asGiven(worst_depth_m)} m. Cherchez une ombre, la lumière d’un phare vidéo, une charte inclinée ou un automatisme non verrouillé.`,
    ),
  card_samples_outside_family: (p) => {
    const end =
      p.case === "clearer" ? "plus claire que l’eau de mer pure" : "plus trouble que tous les types publiés";
    return ofCards(
      `Les prises de la charte demandent une eau ${end} ; vérifiez les profondeurs, les expositions et l’ordre des images.`,
    );
  },
  sun_too_low: ({ elevation_deg, min_elevation_deg }) => ({
    detail:
      "Le soleil est trop bas pour le modèle de lumière du jour : à l’aube et au crépuscule, la lumière est faible, bleue et change vite. Comptez sur les phares vidéo, ou demandez un soleil plus haut.",
    message: `le soleil est à ${shown(elevation_deg, 1)} degrés au-dessus de l’horizon, hors de ce que couvre le modèle`,
    allowed: `un soleil de ${min_elevation_deg} à 90 degrés au-dessus de l’horizon, ou daylight_basis « none » pour ne compter que sur les phares vidéo`,
  }),
  no_light: (p) => {
    if (p.case === "no_source") {
      return {
        detail: "Il n’y a ni lumière du jour ni phare vidéo : rien ne permet de filmer.",
        message: "il n’y a ni phare vidéo ni lumière du jour",
        allowed: "au moins un phare vidéo, ou la lumière du jour",
      };
    }
    const named = p.filter === "kit" ? "un filtre du matériel" : "le filtre sur l’objectif";
    if (p.case === "filter_passes_none") {
      return {
        detail: `Aucune lumière visible pour un appareil ne traverse ${named}.`,
        message: "rien de 400 à 720 nm, là où les appareils voient, ne traverse ce filtre",
        allowed: "une transmission supérieure à 0 quelque part de 400 à 720 nm",
      };
    }
    return {
      detail: `À ${asGiven(p.depth_m)} m, aucune lumière ne traverse ${named}.`,
      message: `ce filtre arrête toute la lumière que l’eau laisse à ${asGiven(p.depth_m)} m`,
      allowed: "une transmission supérieure à 0 là où cette eau est claire",
    };
  },
  no_balance: ({ channel, depth_m }) => ({
    detail: `À ${asGiven(depth_m)} m, le ${CHANNELS[channel]} de l’appareil risque de ne rien recevoir.`,
    message: `aucun gain ne rend ce qui manque au ${CHANNELS[channel]} à ${asGiven(depth_m)} m`,
    allowed:
      "une profondeur et un filtre qui laissent à chaque canal au moins une part sur 10^12 du plus fort",
  }),
  no_daylight_left: ({ depth_m, max_depth_m, is_daylit }) =>
    outside(
      `À ${asGiven(depth_m)} m, il ne reste rien de la lumière du jour dans cette eau.`,
      `${shown(max_depth_m, 1)} m au plus dans cette eau${is_daylit ? ", ou daylight_basis « none » pour ne compter que sur les phares vidéo" : ""}`,
    ),
  no_sight: ({ distance_m, max_distance_m }) =>
    outside(
      `Aucune lumière ne traverse ${asGiven(distance_m)} m de cette eau.`,
      `${shown(max_distance_m, 2)} m au plus dans cette eau`,
    ),
  filter_opaque: () =>
    outside(
      "Cette courbe ne laisse passer aucune lumière visible.",
      "une transmission supérieure à 0 quelque part de 380 à 780 nm",
    ),
};

const HUES: Readonly<Record<string, string>> = {
  blue: "bleue",
  blue_green: "bleu-vert",
  green: "verte",
  brown: "brune",
};
const hueName = (hue: string): string => HUES[hue] ?? hue;

const CHANNELS = { red: "canal rouge", green: "canal vert", blue: "canal bleu" };

const outside = (message: string, allowed: FieldText["allowed"]): OutsideText => ({
  detail: message,
  message,
  allowed,
});

const ofPlace = (message: string): OutsideText =>
  outside(message, "un lieu, et une heure qui existe sur ses horloges, entre 1900 et 2100");

const ofCards = (message: string): OutsideText =>
  outside(message, "des prises de la charte dans une seule et même eau naturelle");

const ofClarity = (field: string, range: LightRefusals["visibility_out_of_range"]): OutsideText => {
  const natural = `de ${metres(range.min_m)} à ${metres(range.max_m)}`;
  return outside(
    `${field} vaut ${asGiven(range.value_m)} ; dans une eau naturelle, on trouve ${natural}.`,
    natural,
  );
};

const metres = (value: number): string => unit(shown(value, value >= 10 ? 0 : 1), "m");
