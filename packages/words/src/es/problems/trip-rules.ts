import type { TripRuleParameters } from "@sunfathom/contract";
import { type FieldText, fieldText, type Texts } from "../../problems/texts.js";
import { kitRules } from "./kit-rules.js";

/** Qué no encaja entre las partes de un plan de viaje. */
export const tripRules: Texts<TripRuleParameters, FieldText> = {
  ...kitRules,
  date_exists: ({ date }) =>
    fieldText(`El día ${date} no existe.`, "un día del calendario entre 1900 y 2100, por ejemplo 2027-01-16"),
  dates_in_order: ({ first, last }) =>
    fieldText(`${last} es anterior a ${first}.`, `${first} o un día posterior`),
  dates_at_most: ({ days, most }) => fieldText(`Son ${days} días.`, `hasta ${most} días`),
  opening_in_order: ({ opens_at, closes_at, least_min }) =>
    fieldText(
      `De ${opens_at} a ${closes_at} no cabe ninguna franja.`,
      `una hora al menos ${least_min} minutos después de ${opens_at}, el mismo día`,
    ),
  site_field: ({ name }) =>
    fieldText(
      `Un sitio no lleva aquí ${name}.`,
      "lugar, días, pronóstico, idioma y unidades junto al sitio; sun_side en lugar de un rumbo",
    ),
  forecast_once: ({ date, first }) =>
    fieldText(
      `Una entrada anterior es para la misma hora del ${date}: ${first}.`,
      "una entrada para cada hora",
    ),
  aim_needs_lamps: () =>
    fieldText(
      "El sitio no tiene focos que puedan dominar.",
      "focos de vídeo en el sitio, u otra finalidad (aim)",
    ),
  trip_ids_unique: ({ first }) =>
    fieldText(`Este id ya lo tiene ${first}.`, "un id que no tenga nada más en la lista"),
  trip_dive_field: ({ name }) =>
    fieldText(
      `La escena de una inmersión no lleva aquí ${name}.`,
      "agua, lugar o sol, nubes, profundidades, vista y fondo; la hora junto a la escena, cámaras y filtros con huéspedes y estante",
    ),
  trip_camera_field: ({ name }) =>
    fieldText(
      `La cámara de un huésped no lleva aquí ${name}.`,
      "cómo expone la cámara, hace el balance de blancos y graba, objetivo, puerto y anillos; filtros en kit o shelf, lo demás en la escena de una inmersión",
    ),
  trip_shelf_filters: () => fieldText("Solo se reparten filtros para el objetivo.", "lens_filter"),
  trip_guest_known: ({ id }) => fieldText(`No hay ningún huésped ${id}.`, "el id de uno de los huéspedes"),
  trip_size: ({ judged, most }) =>
    fieldText(
      `Son ${judged} filtros por juzgar, ante todas las cámaras y en todas las inmersiones.`,
      `hasta ${most}: inmersiones por cámaras distintas por filtros distintos, contando ninguno; pregunte por pocos días a la vez`,
    ),
  profile_one_way: ({ both }) =>
    fieldText(
      both
        ? "Una inmersión viene como muestras o como archivo, y aquí viene de ambas formas."
        : "Falta la inmersión.",
      "samples o uddf, uno de los dos",
    ),
  uddf_not_well_formed: ({ line, column }) =>
    fieldText(
      `El archivo no es XML bien formado: línea ${line}, columna ${column}.`,
      "un archivo en UDDF 3.2",
    ),
  uddf_harmful: ({ case: what, line, most }) =>
    what === "doctype"
      ? fieldText(
          `El archivo tiene una declaración de tipo de documento: línea ${line}.`,
          "un archivo sin ella y sin entidades propias",
        )
      : what === "too_deep"
        ? fieldText(
            `El archivo tiene demasiados elementos anidados unos en otros: línea ${line}.`,
            `hasta ${most} elementos anidados`,
          )
        : fieldText(
            `La inmersión tiene más puntos de los que se admiten: línea ${line}.`,
            `hasta ${most} puntos (waypoint)`,
          ),
  uddf_element: ({ case: what, path, dives }) => {
    const listed =
      dives.length > 0 ? `uddf_dive: ${dives.join(", ")}` : "una inmersión con puntos (waypoint)";
    switch (what) {
      case "root":
        return fieldText(`El archivo empieza con ${path} y no con uddf.`, "un archivo en UDDF 3.2");
      case "version":
        return fieldText(`El archivo tiene otra versión que 3.2: ${path}.`, "versión 3.2, por ejemplo 3.2.1");
      case "no_dive":
        return fieldText(
          `El archivo no tiene ninguna inmersión: ${path}.`,
          "una inmersión con puntos (waypoint)",
        );
      case "no_such_dive":
        return fieldText(`El archivo no tiene ninguna inmersión con ese id: ${path}.`, listed);
      case "which_dive":
        return fieldText(`El archivo tiene varias inmersiones: ${path}.`, listed);
      case "no_samples":
        return fieldText(
          `La inmersión tiene menos de dos puntos: ${path}.`,
          "dos puntos (waypoint) o más, a horas distintas",
        );
    }
  },
  uddf_value: ({ case: what, path, line, value, bound }) => {
    const where = `${path}, en el punto de la línea ${line}`;
    switch (what) {
      case "missing":
        return fieldText(`Falta ${where}.`, "depth y divetime en cada waypoint");
      case "not_a_number":
        return fieldText(`${value} no es un número: ${where}.`, `de 0 a ${bound}`);
      case "out_of_range":
        return fieldText(`${value} está fuera del intervalo: ${where}.`, `de 0 a ${bound}`);
      case "order":
        return fieldText(`${value} s no va después de ${bound} s: ${where}.`, `más de ${bound} s`);
    }
  },
  beside_dive: ({ name }) =>
    fieldText(
      `Un sitio no lleva aquí ${name}.`,
      "las profundidades son las de la inmersión; language, units y expect_model_version van junto al sitio",
    ),
  samples_in_order: ({ time_s, before_s }) =>
    fieldText(
      `La inmersión va hacia atrás en el tiempo: ${time_s} s sigue a ${before_s} s.`,
      `más de ${before_s} s`,
    ),
  clip_within_dive: ({ from, to, first, last }) =>
    fieldText(
      `El clip va de ${from} a ${to} según el reloj de la cámara, y la inmersión de ${first} a ${last}.`,
      `de ${first} a ${last}; start_clock y clock_offset_s dicen cómo concuerdan los relojes`,
    ),
  clips_apart: ({ other }) =>
    fieldText(
      `El clip empieza antes de que termine otro: ${other}.`,
      "clips de una sola cámara, uno tras otro",
    ),
  event_within_dive: ({ time_s, first_s, last_s }) =>
    fieldText(`A los ${time_s} s no había inmersión.`, `de ${first_s} a ${last_s} s`),
  events_need_filter: () =>
    fieldText("El filtro cambió, y el sitio no tiene ninguno.", "filter_kind y filter_density en el sitio"),
  frame_one_place: ({ both }) =>
    fieldText(
      both ? "Se indica de dos maneras dónde estaba la tarjeta." : "No se indica dónde estaba la tarjeta.",
      "time_s o depth_m, uno de los dos",
    ),
  frames_need_filter: () =>
    fieldText(
      "Se filmaron tarjetas con un filtro, y el sitio no tiene ninguno de clase y densidad conocidas.",
      "filter_kind y filter_density en el sitio",
    ),
};
