import type { TripRuleParameters } from "@sunfathom/contract";
import { type FieldText, fieldText, type Texts } from "../../problems/texts.js";
import { kitRules } from "./kit-rules.js";

/** Was zwischen den Teilen eines Plans für eine Reise nicht stimmt. */
export const tripRules: Texts<TripRuleParameters, FieldText> = {
  ...kitRules,
  date_exists: ({ date }) =>
    fieldText(`Den Tag ${date} gibt es nicht.`, "ein Tag des Kalenders von 1900 bis 2100, etwa 2027-01-16"),
  dates_in_order: ({ first, last }) =>
    fieldText(`${last} liegt vor ${first}.`, `${first} oder ein späterer Tag`),
  dates_at_most: ({ days, most }) => fieldText(`Das sind ${days} Tage.`, `bis zu ${most} Tage`),
  opening_in_order: ({ opens_at, closes_at, least_min }) =>
    fieldText(
      `Von ${opens_at} bis ${closes_at} passt kein Fenster hinein.`,
      `eine Zeit mindestens ${least_min} Minuten nach ${opens_at}, am selben Tag`,
    ),
  site_field: ({ name }) =>
    fieldText(
      `Ein Tauchplatz hat hier kein ${name}.`,
      "Ort, Tage, Vorhersage, Sprache und Einheiten neben dem Tauchplatz; sun_side an Stelle einer Blickrichtung",
    ),
  forecast_once: ({ date, first }) =>
    fieldText(
      `Ein früherer Eintrag gilt am ${date} für dieselbe Zeit: ${first}.`,
      "ein Eintrag für jede Zeit",
    ),
  aim_needs_lamps: () =>
    fieldText(
      "Der Tauchplatz hat keine Videolampen, die führen könnten.",
      "lamps im Tauchplatz oder ein anderes Ziel",
    ),
  trip_ids_unique: ({ first }) =>
    fieldText(`Diese id hat schon ${first}.`, "eine id, die sonst nichts in der Liste hat"),
  trip_dive_field: ({ name }) =>
    fieldText(
      `Die Szene eines Tauchgangs hat hier kein ${name}.`,
      "Wasser, Ort oder Sonne, Wolken, Tiefen, Blick und Grund; die Zeit neben der Szene, Kameras und Filter bei Gästen und Regal",
    ),
  trip_camera_field: ({ name }) =>
    fieldText(
      `Die Kamera eines Gastes hat hier kein ${name}.`,
      "wie die Kamera belichtet, abgleicht und aufnimmt, Objektiv, Port und Ringe; Filter in kit oder shelf, alles andere in der Szene eines Tauchgangs",
    ),
  trip_shelf_filters: () => fieldText("Verteilt werden nur Filter für das Objektiv.", "lens_filter"),
  trip_guest_known: ({ id }) => fieldText(`Einen Gast ${id} gibt es nicht.`, "die id eines der Gäste"),
  trip_size: ({ judged, most }) =>
    fieldText(
      `Das sind ${judged} Filter zu beurteilen, vor allen Kameras und bei allen Tauchgängen.`,
      `bis zu ${most}: Tauchgänge mal verschiedene Kameras mal verschiedene Filter, keiner mitgezählt; frag nach wenigen Tagen auf einmal`,
    ),
  profile_one_way: ({ both }) =>
    fieldText(
      both
        ? "Ein Tauchgang kommt als Messpunkte oder als Datei, hier als beides."
        : "Es fehlt der Tauchgang.",
      "samples oder uddf, eines von beiden",
    ),
  uddf_not_well_formed: ({ line, column }) =>
    fieldText(
      `Die Datei ist kein wohlgeformtes XML: Zeile ${line}, Spalte ${column}.`,
      "eine Datei in UDDF 3.2",
    ),
  uddf_harmful: ({ case: what, line, most }) =>
    what === "doctype"
      ? fieldText(
          `Die Datei hat eine Dokumenttyp-Deklaration: Zeile ${line}.`,
          "eine Datei ohne sie und ohne eigene Entitäten",
        )
      : what === "too_deep"
        ? fieldText(
            `In der Datei sind Elemente zu tief verschachtelt: Zeile ${line}.`,
            `bis zu ${most} Elemente ineinander`,
          )
        : fieldText(
            `Der Tauchgang hat mehr Wegpunkte, als angenommen werden: Zeile ${line}.`,
            `bis zu ${most} Wegpunkte`,
          ),
  uddf_element: ({ case: what, path, dives }) => {
    const listed = dives.length > 0 ? `uddf_dive: ${dives.join(", ")}` : "ein Tauchgang mit Wegpunkten";
    switch (what) {
      case "root":
        return fieldText(`Die Datei beginnt mit ${path} statt mit uddf.`, "eine Datei in UDDF 3.2");
      case "version":
        return fieldText(`Die Datei hat eine andere Version als 3.2: ${path}.`, "Version 3.2, etwa 3.2.1");
      case "no_dive":
        return fieldText(`Die Datei hat keinen Tauchgang: ${path}.`, "ein Tauchgang mit Wegpunkten");
      case "no_such_dive":
        return fieldText(`Die Datei hat keinen Tauchgang mit dieser id: ${path}.`, listed);
      case "which_dive":
        return fieldText(`Die Datei hat mehrere Tauchgänge: ${path}.`, listed);
      case "no_samples":
        return fieldText(
          `Der Tauchgang hat weniger als zwei Wegpunkte: ${path}.`,
          "zwei Wegpunkte oder mehr, zu verschiedenen Zeiten",
        );
    }
  },
  uddf_value: ({ case: what, path, line, value, bound }) => {
    const where = `${path}, im Wegpunkt von Zeile ${line}`;
    switch (what) {
      case "missing":
        return fieldText(`Es fehlt ${where}.`, "depth und divetime in jedem Wegpunkt");
      case "not_a_number":
        return fieldText(`${value} ist keine Zahl: ${where}.`, `0 bis ${bound}`);
      case "out_of_range":
        return fieldText(`${value} ist außerhalb des Bereichs: ${where}.`, `0 bis ${bound}`);
      case "order":
        return fieldText(`${value} s folgt nicht auf ${bound} s: ${where}.`, `mehr als ${bound} s`);
    }
  },
  beside_dive: ({ name }) =>
    fieldText(
      `Ein Tauchplatz hat hier kein ${name}.`,
      "die Tiefen sind die des Tauchgangs; language, units und expect_model_version stehen neben dem Tauchplatz",
    ),
  samples_in_order: ({ time_s, before_s }) =>
    fieldText(
      `Der Tauchgang geht in der Zeit zurück: ${time_s} s folgt auf ${before_s} s.`,
      `mehr als ${before_s} s`,
    ),
  clip_within_dive: ({ from, to, first, last }) =>
    fieldText(
      `Der Clip läuft von ${from} bis ${to} nach der Uhr der Kamera, der Tauchgang von ${first} bis ${last}.`,
      `von ${first} bis ${last}; start_clock und clock_offset_s sagen, wie die Uhren zueinander gehen`,
    ),
  clips_apart: ({ other }) =>
    fieldText(
      `Der Clip beginnt, bevor ein anderer endet: ${other}.`,
      "Clips einer Kamera, einer nach dem anderen",
    ),
  event_within_dive: ({ time_s, first_s, last_s }) =>
    fieldText(`Bei ${time_s} s gab es keinen Tauchgang.`, `${first_s} bis ${last_s} s`),
  events_need_filter: () =>
    fieldText(
      "Der Filter wurde gewechselt, und der Tauchplatz hat keinen.",
      "filter_kind und filter_density im Tauchplatz",
    ),
  frame_one_place: ({ both }) =>
    fieldText(
      both ? "Wo die Karte war, ist doppelt angegeben." : "Es fehlt, wo die Karte war.",
      "time_s oder depth_m, eines von beiden",
    ),
  frames_need_filter: () =>
    fieldText(
      "Karten wurden durch einen Filter gefilmt, und der Tauchplatz hat keinen von bekannter Art und Dichte.",
      "filter_kind und filter_density im Tauchplatz",
    ),
};
