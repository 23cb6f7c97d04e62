import type { OutsideCode } from "@sunfathom/contract";
import type { LightRefusals } from "@sunfathom/planner";
import type { FieldText, OutsideText, Texts } from "../../problems/texts.js";
import { asGiven, either, shown, unit } from "../format.js";

/** Por qué el modelo no tiene respuesta para la luz de una escena. */
export const outsideLight: Texts<Pick<LightRefusals, OutsideCode & keyof LightRefusals>, OutsideText> = {
  instant_out_of_range: ({ year, first_year, last_year }) => {
    const given = year === undefined ? "no es una fecha" : `cae en el año ${year}`;
    return ofPlace(`La hora ${given}; el modelo conoce la posición del sol de ${first_year} a ${last_year}.`);
  },
  local_time_malformed: ({ local_time, first_year, last_year }) =>
    ofPlace(
      `local_time "${local_time}" no es una fecha con hora como 2026-03-10T10:15, entre los años ${first_year} y ${last_year}, sin desfase respecto a UTC.`,
    ),
  local_time_skipped: ({ local_time, time_zone }) =>
    ofPlace(
      `Los relojes de ${time_zone} nunca marcaron ${local_time}: al adelantarlos se saltaron esa hora. Indique una hora anterior o posterior al cambio.`,
    ),
  time_zone_unknown: ({ time_zone }) =>
    ofPlace(
      `time_zone "${time_zone}" no es un nombre de la base de datos de zonas horarias de la IANA, como Etc/GMT+9.`,
    ),
  secchi_depth_out_of_range: (range) => ofClarity("secchi_depth_m", range),
  visibility_out_of_range: (range) => ofClarity("visibility_m", range),
  water_hue_contradicts_measure: ({ measure, value_m, water_hue, min_m, max_m, fitting_hues }) => {
    return outside(
      `${measure} de ${asGiven(value_m)} no corresponde a un agua ${hueName(water_hue)}: en ella va de ${metres(min_m)} a ${metres(max_m)}. Correspondería a un agua ${either(fitting_hues.map(hueName))}.`,
      `de ${metres(min_m)} a ${metres(max_m)} con water_hue ${water_hue}, o water_hue ${either(fitting_hues)}`,
    );
  },
  card_samples_too_few: ({ span_m, least_span_m }) =>
    ofCards(
      `Entre las profundidades de la tarjeta hay solo ${shown(span_m, 1)} m: use dos profundidades separadas al menos ${least_span_m} m.`,
    ),
  card_samples_malformed: (p) => {
    switch (p.case) {
      case "not_with_all":
        return ofCards(
          `${p.given} de ${p.samples} tomas de la tarjeta tienen ${p.field}: indíquelo en todas o en ninguna.`,
        );
      case "clipped":
        return ofCards(
          `La toma de la tarjeta a ${asGiven(p.depth_m)} m está quemada (${asGiven(p.value)}): repítala con menos exposición.`,
        );
      case "dark":
        return ofCards(
          `En la tarjeta a ${asGiven(p.depth_m)} m, un canal no grabó nada (${asGiven(p.value)}): expóngala más o use una tarjeta a menos profundidad.`,
        );
      case "balance_unlocked":
        return ofCards(
          "El balance de blancos puede haber cambiado entre las imágenes: use raw, bloquéelo, o indique red_gain, green_gain y blue_gain en cada una.",
        );
      default:
        return ofCards(
          `La tarjeta a ${asGiven(p.depth_m)} m tiene una profundidad, una exposición o unas ganancias imposibles.`,
        );
    }
  },
  card_samples_contradict: ({ rms_ln, worst_depth_m }) =>
    ofCards(
      `Ninguna agua explica estas tomas de la tarjeta: se apartan del mejor ajuste ${shown(rms_ln, 2)} (logaritmo natural), sobre todo a ${asGiven(worst_depth_m)} m. Busque sombras, luz de los focos de vídeo, una tarjeta girada o un automatismo sin bloquear.`,
    ),
  card_samples_outside_family: (p) => {
    const end =
      p.case === "clearer" ? "más clara que el agua de mar pura" : "más turbia que cualquier tipo publicado";
    return ofCards(
      `Según las tomas de la tarjeta, el agua sería ${end}: revise las profundidades, las exposiciones y el orden de las imágenes.`,
    );
  },
  sun_too_low: ({ elevation_deg, min_elevation_deg }) => ({
    detail:
      "El sol está demasiado bajo para el modelo de luz del día: al amanecer y al anochecer la luz es débil, azul y cambia deprisa. Cuente con focos de vídeo, o pida un sol más alto.",
    message: `el sol está a ${shown(elevation_deg, 1)} grados sobre el horizonte, fuera del alcance del modelo`,
    allowed: `un sol de ${min_elevation_deg} a 90 grados sobre el horizonte, o daylight_basis "none" para contar solo con focos de vídeo`,
  }),
  no_light: (p) => {
    if (p.case === "no_source") {
      return {
        detail: "No hay luz del día ni ningún foco de vídeo: no hay luz con la que filmar.",
        message: "no hay ningún foco de vídeo ni luz del día",
        allowed: "al menos un foco de vídeo, o luz del día",
      };
    }
    const named = p.filter === "kit" ? "un filtro del equipo" : "el filtro del objetivo";
    if (p.case === "filter_passes_none") {
      return {
        detail: `Por ${named} no pasa ninguna luz que vea una cámara.`,
        message: "de 400 a 720 nm, donde ven las cámaras, este filtro no deja pasar nada",
        allowed: "una transmitancia mayor que 0 en algún punto de 400 a 720 nm",
      };
    }
    return {
      detail: `A ${asGiven(p.depth_m)} m no pasa luz por ${named}.`,
      message: `este filtro detiene toda la luz que el agua deja a ${asGiven(p.depth_m)} m`,
      allowed: "una transmitancia mayor que 0 donde esta agua es clara",
    };
  },
  no_balance: ({ channel, depth_m }) => ({
    detail: `A ${asGiven(depth_m)} m, el canal ${CHANNELS[channel]} de la cámara puede no recibir nada.`,
    message: `ninguna ganancia recupera lo que le falta al canal ${CHANNELS[channel]} a ${asGiven(depth_m)} m`,
    allowed: "una profundidad y un filtro que dejen a cada canal al menos una parte en 10^12 del más fuerte",
  }),
  no_daylight_left: ({ depth_m, max_depth_m, is_daylit }) =>
    outside(
      `A ${asGiven(depth_m)} m, en esta agua ya no queda luz del día.`,
      `como máximo ${shown(max_depth_m, 1)} m en esta agua${is_daylit ? ', o daylight_basis "none" para contar solo con focos de vídeo' : ""}`,
    ),
  no_sight: ({ distance_m, max_distance_m }) =>
    outside(
      `Ninguna luz atraviesa ${asGiven(distance_m)} m de esta agua.`,
      `como máximo ${shown(max_distance_m, 2)} m en esta agua`,
    ),
  filter_opaque: () =>
    outside(
      "Esta curva no deja pasar ninguna luz visible.",
      "una transmitancia mayor que 0 en algún punto de 380 a 780 nm",
    ),
};

const HUES: Readonly<Record<string, string>> = {
  blue: "azul",
  blue_green: "verde azulada",
  green: "verde",
  brown: "parda",
};
const hueName = (hue: string): string => HUES[hue] ?? hue;

const CHANNELS = { red: "rojo", green: "verde", blue: "azul" };

const outside = (message: string, allowed: FieldText["allowed"]): OutsideText => ({
  detail: message,
  message,
  allowed,
});

const ofPlace = (message: string): OutsideText =>
  outside(message, "un lugar, y una hora que marquen sus relojes, entre 1900 y 2100");

const ofCards = (message: string): OutsideText =>
  outside(message, "tomas de la tarjeta en una misma agua natural");

const ofClarity = (field: string, range: LightRefusals["visibility_out_of_range"]): OutsideText => {
  const natural = `de ${metres(range.min_m)} a ${metres(range.max_m)}`;
  return outside(`${field} es ${asGiven(range.value_m)}; en agua natural va ${natural}.`, natural);
};

const metres = (value: number): string => unit(shown(value, value >= 10 ? 0 : 1), "m");
