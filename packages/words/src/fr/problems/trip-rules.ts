import type { TripRuleParameters } from "@sunfathom/contract";
import { type FieldText, fieldText, type Texts } from "../../problems/texts.js";
import { kitRules } from "./kit-rules.js";

/** Ce qui ne va pas entre les parties d’un plan de voyage. */
export const tripRules: Texts<TripRuleParameters, FieldText> = {
  ...kitRules,
  date_exists: ({ date }) =>
    fieldText(
      `Le jour ${date} n’existe pas.`,
      "un jour du calendrier de 1900 à 2100, par exemple 2027-01-16",
    ),
  dates_in_order: ({ first, last }) =>
    fieldText(`${last} est avant ${first}.`, `${first} ou un jour plus tard`),
  dates_at_most: ({ days, most }) => fieldText(`Cela fait ${days} jours.`, `jusqu’à ${most} jours`),
  opening_in_order: ({ opens_at, closes_at, least_min }) =>
    fieldText(
      `De ${opens_at} à ${closes_at}, aucun créneau ne tient.`,
      `une heure au moins ${least_min} minutes après ${opens_at}, le même jour`,
    ),
  site_field: ({ name }) =>
    fieldText(
      `Un site n’a pas de champ ${name} ici.`,
      "lieu, jours, prévision, langue et unités à côté du site ; sun_side à la place d’un cap",
    ),
  forecast_once: ({ date, first }) =>
    fieldText(
      `Une entrée précédente vaut pour la même heure le ${date} : ${first}.`,
      "une seule entrée par heure",
    ),
  aim_needs_lamps: () =>
    fieldText("Le site n’a pas de phares vidéo qui puissent dominer.", "lamps dans le site, ou un autre but"),
  trip_ids_unique: ({ first }) =>
    fieldText(`Cet id est déjà celui de ${first}.`, "un id que rien d’autre n’a dans la liste"),
  trip_dive_field: ({ name }) =>
    fieldText(
      `La scène d’une plongée n’a pas de champ ${name} ici.`,
      "eau, lieu ou soleil, nuages, profondeurs, vue et fond ; l’heure à côté de la scène, appareils et filtres avec les clients et le stock",
    ),
  trip_camera_field: ({ name }) =>
    fieldText(
      `L’appareil d’un client n’a pas de champ ${name} ici.`,
      "exposition, balance des blancs et enregistrement, objectif, hublot et bagues ; filtres dans kit ou shelf, le reste dans la scène d’une plongée",
    ),
  trip_shelf_filters: () => fieldText("Seuls les filtres d’objectif se répartissent.", "lens_filter"),
  trip_guest_known: ({ id }) => fieldText(`Il n’y a pas de client ${id}.`, "l’id d’un des clients"),
  trip_size: ({ judged, most }) =>
    fieldText(
      `Cela fait ${judged} filtres à juger, devant tous les appareils et à toutes les plongées.`,
      `jusqu’à ${most} : plongées fois appareils différents fois filtres différents, « sans filtre » compris ; demandez moins de jours à la fois`,
    ),
  profile_one_way: ({ both }) =>
    fieldText(
      both
        ? "Une plongée vient sous forme de mesures ou de fichier, et celle-ci vient sous les deux formes."
        : "Il manque la plongée.",
      "samples ou uddf, l’un des deux",
    ),
  uddf_not_well_formed: ({ line, column }) =>
    fieldText(
      `Le fichier n’est pas du XML bien formé : ligne ${line}, colonne ${column}.`,
      "un fichier en UDDF 3.2",
    ),
  uddf_harmful: ({ case: what, line, most }) =>
    what === "doctype"
      ? fieldText(
          `Le fichier a une déclaration de type de document : ligne ${line}.`,
          "un fichier sans cette déclaration et sans entités propres",
        )
      : what === "too_deep"
        ? fieldText(
            `Le fichier a des éléments trop imbriqués : ligne ${line}.`,
            `jusqu’à ${most} éléments imbriqués`,
          )
        : fieldText(
            `La plongée a plus de points que le maximum accepté : ligne ${line}.`,
            `jusqu’à ${most} points (waypoint)`,
          ),
  uddf_element: ({ case: what, path, dives }) => {
    const listed =
      dives.length > 0 ? `uddf_dive : ${dives.join(", ")}` : "une plongée avec des points (waypoint)";
    switch (what) {
      case "root":
        return fieldText(`Le fichier commence par ${path} et non par uddf.`, "un fichier en UDDF 3.2");
      case "version":
        return fieldText(
          `Le fichier a une autre version que 3.2 : ${path}.`,
          "version 3.2, par exemple 3.2.1",
        );
      case "no_dive":
        return fieldText(
          `Le fichier n’a aucune plongée : ${path}.`,
          "une plongée avec des points (waypoint)",
        );
      case "no_such_dive":
        return fieldText(`Le fichier n’a aucune plongée de cet id : ${path}.`, listed);
      case "which_dive":
        return fieldText(`Le fichier a plusieurs plongées : ${path}.`, listed);
      case "no_samples":
        return fieldText(
          `La plongée a moins de deux points : ${path}.`,
          "deux points (waypoint) ou plus, à des moments différents",
        );
    }
  },
  uddf_value: ({ case: what, path, line, value, bound }) => {
    const where = `${path}, au point de la ligne ${line}`;
    switch (what) {
      case "missing":
        return fieldText(`Il manque ${where}.`, "depth et divetime dans chaque waypoint");
      case "not_a_number":
        return fieldText(`${value} n’est pas un nombre : ${where}.`, `0 à ${bound}`);
      case "out_of_range":
        return fieldText(`${value} est hors des bornes : ${where}.`, `0 à ${bound}`);
      case "order":
        return fieldText(`${value} s ne suit pas ${bound} s : ${where}.`, `plus de ${bound} s`);
    }
  },
  beside_dive: ({ name }) =>
    fieldText(
      `Un site n’a pas de champ ${name} ici.`,
      "les profondeurs sont celles de la plongée ; language, units et expect_model_version se placent à côté du site",
    ),
  samples_in_order: ({ time_s, before_s }) =>
    fieldText(`La plongée remonte le temps : ${time_s} s suit ${before_s} s.`, `plus de ${before_s} s`),
  clip_within_dive: ({ from, to, first, last }) =>
    fieldText(
      `Le plan va de ${from} à ${to} à l’horloge de l’appareil, et la plongée de ${first} à ${last}.`,
      `de ${first} à ${last} ; start_clock et clock_offset_s disent comment s’accordent les horloges`,
    ),
  clips_apart: ({ other }) =>
    fieldText(
      `Le plan commence avant la fin d’un autre : ${other}.`,
      "les plans d’un seul appareil, l’un après l’autre",
    ),
  event_within_dive: ({ time_s, first_s, last_s }) =>
    fieldText(`À ${time_s} s, il n’y avait pas de plongée.`, `${first_s} à ${last_s} s`),
  events_need_filter: () =>
    fieldText("Le filtre a changé, et le site n’en a pas.", "filter_kind et filter_density dans le site"),
  frame_one_place: ({ both }) =>
    fieldText(
      both ? "La place de la charte est indiquée deux fois." : "On ne sait pas où était la charte.",
      "time_s ou depth_m, l’un des deux",
    ),
  frames_need_filter: () =>
    fieldText(
      "Des chartes ont été filmées à travers un filtre, et le site n’en a aucun de type et de densité connus.",
      "filter_kind et filter_density dans le site",
    ),
};
