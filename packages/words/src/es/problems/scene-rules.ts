import type { SceneRuleParameters } from "@sunfathom/contract";
import { type FieldText, type Texts, fieldText as text } from "../../problems/texts.js";
import { asGiven, either, grouped } from "../format.js";
import {
  halfFilter,
  limitsInOrder,
  missing,
  notRising,
  notWhole,
  repeatedId,
  withinLimits,
} from "./rule-parts.js";
import { sensorRules } from "./sensor-rules.js";
import { waterWays } from "./water-ways.js";

/** Qué está mal cuando no se cumple una regla entre campos de una escena. */
export const sceneRuleTexts: Texts<SceneRuleParameters, FieldText> = {
  one_water_basis: ({ given }) =>
    text(
      given === 0
        ? "La escena no describe el agua."
        : `La escena describe el agua de ${given} maneras a la vez.`,
      `exactamente una de: ${waterWays}`,
    ),
  water_companions: (p) =>
    p.case === "missing"
      ? text(missing(p.missing), `${p.field} junto con ${p.missing}`)
      : text(
          `${p.field} no tiene efecto sin ${either(p.goes_with)}.`,
          `con ${either(p.goes_with)}, o no indicarlo`,
        ),
  kd_samples_rising: notRising("kd_samples"),
  card_exposure_whole: notWhole,
  card_gains_whole: notWhole,
  sun_with_basis_sun: ({ daylight_basis }) =>
    text(
      `Se indica la altura del sol, pero daylight_basis es ${daylight_basis}.`,
      "omitirla, o daylight_basis sun",
    ),
  place_with_basis_place_time: ({ field, daylight_basis }) =>
    text(
      `${field} no tiene efecto con daylight_basis ${daylight_basis}.`,
      "omitirlo, o daylight_basis place_time",
    ),
  place_and_time_whole: (p) =>
    p.case === "missing"
      ? text(
          `Falta ${p.field}: la altura del sol se calcula con el lugar y la hora.`,
          "latitude_deg y longitude_deg",
        )
      : text(
          {
            twice: "La hora se indica de dos maneras.",
            half: "local_time y time_zone van juntos: falta uno de los dos.",
            not_given: "Falta la hora.",
          }[p.case],
          "time, o local_time y time_zone",
        ),
  day_exists: () => text("El mes no tiene ese día.", "un día que exista en el calendario"),
  one_depth: (p) =>
    text(
      p.case === "missing"
        ? missing(p.field)
        : p.case === "twice"
          ? "La profundidad se indica de dos maneras."
          : "Falta la profundidad.",
      "depth_m, o min_depth_m junto con max_depth_m",
    ),
  depths_in_order: ({ min_depth_m, max_depth_m }) =>
    text(
      `${asGiven(min_depth_m)} m es más profundo que max_depth_m, ${asGiven(max_depth_m)} m.`,
      `como máximo ${asGiven(max_depth_m)} m`,
    ),
  one_sun_side: () => text("Se indica de dos maneras dónde está el sol.", "sun_side, o camera_heading_deg"),
  heading_with_place_time: ({ daylight_basis }) =>
    text(
      `Con daylight_basis ${daylight_basis} no se sabe dónde está el sol, así que un rumbo no tiene efecto.`,
      "con lugar y hora, o sun_side en su lugar",
    ),
  one_bottom: () => text("El fondo se indica de dos maneras.", "bottom, o bottom_reflectance"),
  bottom_with_depth: () =>
    text(
      "bottom es none, así que una profundidad del fondo no tiene efecto.",
      "omitirla, o indicar de qué es el fondo",
    ),
  bottom_below_camera: ({ bottom_depth_m, deepest_m }) =>
    text(
      `El fondo, a ${asGiven(bottom_depth_m)} m, queda por encima del motivo más profundo, a ${asGiven(deepest_m)} m.`,
      `al menos ${asGiven(deepest_m)} m`,
    ),
  bottom_reflectance_rising: notRising("bottom_reflectance"),
  iso_limits_in_order: limitsInOrder("no mayor que"),
  iso_within_limits: withinLimits,
  f_number_limits_in_order: limitsInOrder("no mayor que"),
  f_number_within_limits: withinLimits,
  white_balance_cct_K_limits_in_order: limitsInOrder("menor que"),
  one_shutter: () =>
    text(
      "El tiempo de exposición se indica de dos maneras.",
      "shutter_s, o shutter_angle_deg con frame_rate_fps",
    ),
  shutter_within_frame: ({ frame_rate_fps, frame_s }) =>
    text(
      `A ${asGiven(frame_rate_fps)} fotogramas por segundo, un fotograma dura ${asGiven(frame_s)} s, y el tiempo de exposición no puede ser mayor.`,
      `como máximo ${asGiven(frame_s)} s`,
    ),
  shutter_not_too_short: ({ shutter_s, shortest_s }) =>
    text(
      `Los fotogramas por segundo y el ángulo de obturación dan un tiempo de exposición de 1/${grouped(Number((1 / shutter_s).toPrecision(2)))} s, demasiado corto.`,
      `un ángulo mayor o menos fotogramas por segundo: al menos ${asGiven(shortest_s)} s`,
    ),
  one_recording_curve: () =>
    text("La curva de grabación se indica de dos maneras.", "recording_curve, o recording_curve_points"),
  recording_curve_points_rising: ({ field, value, before, least_rise }) =>
    text(
      `En recording_curve_points, ${field} tiene que ir en aumento: ${asGiven(value)} aparece después de ${asGiven(before)}.`,
      least_rise > 0
        ? `al menos ${asGiven(least_rise)} más que ${asGiven(before)}`
        : `más de ${asGiven(before)}`,
    ),
  recording_curve_points_whole: ({ wanted, light_share }) =>
    text(
      `La curva ${wanted === 0 ? "empieza" : "termina"} en un light_share de ${asGiven(light_share)}: la luz más ${wanted === 0 ? "débil" : "fuerte"} se queda sin nivel.`,
      `${wanted} en el ${wanted === 0 ? "primer" : "último"} punto`,
    ),
  ...sensorRules,
  kelvin_with_mode: (p) =>
    p.case === "missing"
      ? text(
          "white_balance_mode es kelvin, pero falta white_balance_kelvin_K.",
          "white_balance_kelvin_K, o white_balance_mode card o auto",
        )
      : text(
          `white_balance_mode ${p.white_balance_mode} no usa un valor en kelvin.`,
          "omitirlo, o white_balance_mode kelvin",
        ),
  kelvin_within_limits: ({ white_balance_kelvin_K, min_K, max_K }) =>
    text(
      `El balance de blancos de la cámara no se puede poner en ${white_balance_kelvin_K} K.`,
      `de ${min_K} a ${max_K}, u otros límites en white_balance_min_cct_K y white_balance_max_cct_K`,
    ),
  auto_exposure_free: ({ fixed }) =>
    text(
      `${fixed.join(", ")} están todos fijados, así que a la exposición automática no le queda nada que ajustar.`,
      "exposure_mode manual, u omitir uno de ellos",
    ),
  card_balance_not_auto: () =>
    text(
      "Con white_balance_mode auto, la cámara va cambiando el balance de blancos, así que no queda fijo de una toma de la tarjeta a otra.",
      "white_balance_mode card o kelvin para imágenes raw o un único balance, u omitir locked_balance",
    ),
  one_lens_filter: () => text("El filtro del objetivo se indica de dos maneras.", oneFilter),
  one_filter_strength: () =>
    text("La densidad del filtro se indica de dos maneras.", "filter_density o filter_stops, no los dos"),
  lens_filter_pair: halfFilter("del filtro del objetivo"),
  filter_transmittance_rising: notRising("filter_transmittance"),
  filter_samples_agree: (p) =>
    text(
      p.case === "brighter"
        ? `Con el filtro, la tarjeta sale ${asGiven(p.stops)} pasos más clara en ${COLOURS[p.colour]} que sin él, y eso no lo hace ningún filtro.`
        : `Este par y otro anterior difieren en ${asGiven(p.stops)} pasos de ${COLOURS[p.colour]}.`,
      "fotografiar la tarjeta con y sin filtro en la misma luz, con la misma exposición y el mismo balance de blancos, y dar valores lineales",
    ),
  kit_ids_unique: repeatedId,
  kit_filters: (p) => {
    if (p.case === "half") return halfFilter("de este filtro del equipo")(p);
    if (p.case === "lamp") return text("Esto es un foco de vídeo, no un filtro.", "ningún campo de filtro");
    return text(
      p.case === "twice" ? "El filtro se indica de dos maneras." : "El filtro no está descrito.",
      oneFilter,
    );
  },
  kit_curves_rising: notRising("filter_transmittance"),
  lamp_colour: ({ fields }) => text("El color del foco de vídeo se indica de dos maneras.", either(fields)),
  lamp_filter_pair: halfFilter("del filtro del foco de vídeo"),
  lamps_once: () =>
    text("Los focos de vídeo se indican de dos maneras.", "`lamps`, o campos que empiezan por `lamp_`"),
  lamp_complete: (p) => text(missing(p.missing), "lamp_flux_lm junto con lamp_distance_m"),
  lead_distance_with_stops: () =>
    text(
      "wanted_lead_distance_m no tiene efecto sin wanted_lead_stops.",
      "con wanted_lead_stops, o no indicarla",
    ),
  overhead_parts: ({ field, goes_with }) =>
    text(
      `${field} no tiene efecto sin overhead ${either(goes_with)}.`,
      `con overhead ${either(goes_with)}, o no indicarlo`,
    ),
  cave_is_dark: ({ daylight_basis }) =>
    text(
      `En una cueva no hay luz del día, pero daylight_basis es ${daylight_basis}.`,
      "overhead cavern donde llegue luz del día, o daylight_basis none",
    ),
  mounting_kinds: (p) => text(missing(p.missing), "port_kind y lens_kind"),
};

const COLOURS = { red: "rojo", green: "verde", blue: "azul" };

const oneFilter = "filter_kind y filter_density (o filter_stops), o filter_transmittance, o filter_samples";
