import type { LightCauses } from "@sunfathom/planner";
import type { CauseText } from "../answer-texts.js";
import type { Texts } from "../problems/texts.js";
import { lampCauses } from "./lamp-causes.js";

const twoDepths = "fotografíe una tarjeta gris a dos profundidades";

/** Lo que hace incierta la luz en el agua. */
export const causes: Texts<LightCauses, CauseText> = {
  ...lampCauses,
  water_type_resolution: () => ({
    text: "Un tipo de agua es una clase amplia: esta agua puede estar en cualquier punto entre los tipos vecinos",
    how_to_shrink: `Indique la visibilidad y el color del agua, o ${twoDepths}.`,
  }),
  kd_measurement: () => ({
    text: "Error de medida de la atenuación difusa",
    how_to_shrink: "Mida en más longitudes de onda y a más profundidades.",
  }),
  clarity_reading: () => ({
    text: "Con qué precisión ha estimado la visibilidad, la distancia a la que se deja de ver un objeto",
    how_to_shrink: `Léala otra vez con un cabo marcado, o ${twoDepths}.`,
  }),
  beam_to_diffuse: () => ({
    text: "La visibilidad no basta para saber lo rápido que se apaga la luz del día con la profundidad",
    how_to_shrink: `Baje un disco de Secchi, o ${twoDepths}.`,
  }),
  spectral_shape: () => ({
    text: "Dos aguas que parecen iguales pueden quitar colores distintos",
    how_to_shrink: "Fotografíe una tarjeta gris a dos profundidades.",
  }),
  hue_name: () => ({
    text: "La misma palabra para un color puede nombrar aguas muy distintas",
    how_to_shrink: "Fotografíe una tarjeta gris a dos profundidades.",
  }),
  scattering_per_water: () => perWater,
  chlorophyll_relation: () => ({
    text: "Aguas con la misma clorofila atenúan la luz de forma distinta",
    how_to_shrink: `Baje un disco de Secchi, o ${twoDepths}.`,
  }),
  card_noise: () => ({
    text: "Dispersión de las lecturas de la tarjeta",
    how_to_shrink:
      "Fotografíe la tarjeta a más profundidades, con la exposición y el balance de blancos bloqueados.",
  }),
  water_scattering: (p) => (p.known_by === "sight" ? asSeen : perWater),
  path_scattering: () => ({
    text: "Cuánta luz dispersada llega todavía en un recorrido corto",
    how_to_shrink:
      "Fotografíe una tarjeta con el brazo extendido y otra a la distancia del motivo, y compare.",
  }),
  sensor: () => ({
    text: "Cuánta luz verde y azul ve el canal rojo de esta cámara",
    how_to_shrink: "Fotografíe con esta cámara una carta de color a la profundidad de trabajo.",
  }),
  daylight_level: () => ({
    text: "Cuánta luz da el cielo",
    how_to_shrink: "Indique la nubosidad, o mida en la superficie con un fotómetro.",
  }),
  upright_share: () => ({
    text: "Hacia dónde mira la cámara respecto al sol y, por tanto, cuánta luz de arriba le llega al motivo",
    how_to_shrink: "Indique dónde está el sol respecto a la cámara, o mida a la profundidad de trabajo.",
  }),
  light_field: () => ({
    text: "De qué direcciones llega la luz allí abajo; el modelo lo simplifica",
    how_to_shrink: "Mida a la profundidad de trabajo.",
  }),
  reference_sun: () => ({
    text: "Con qué sol se midió la atenuación de esta agua",
    how_to_shrink: `El mismo día, mida la atenuación o ${twoDepths}.`,
  }),
  overhead: () => ({
    text: "Cuánta luz del día entra por debajo de lo que hay encima",
    how_to_shrink:
      "Mida una tarjeta gris allí y en aguas abiertas, e indique la relación; bajo el hielo, indique el grosor del hielo y el de la nieve.",
  }),
  sea_floor: () => ({
    text: "Lo claro que es el fondo",
    how_to_shrink: "Indique de qué es el fondo y a qué profundidad está, o su reflectancia.",
  }),
  filter_edge: () => ({
    text: "Qué colores quita de verdad este filtro: el modelo se guía por su tipo",
    how_to_shrink: "Fotografíe a la luz del día una tarjeta gris con él y sin él, o dé su curva.",
  }),
  filter_width: () => ({
    text: "Cuánto quita este filtro de los colores vecinos: el modelo se guía por su tipo",
    how_to_shrink: "Fotografíe a la luz del día una tarjeta gris con él y sin él, o dé su curva.",
  }),
  filter_density: () => ({
    text: "Qué densidad tiene este filtro: las fotos de una tarjeta solo la dan de forma aproximada",
    how_to_shrink: "Dé su curva.",
  }),
  full_well: () => ({
    text: "Cuántos fotones caben en cada píxel del sensor",
    how_to_shrink: "Un buceador no puede hacer nada: cambia de una cámara a otra.",
  }),
};

const perWater: CauseText = {
  text: "Lo turbia que está esta agua",
  how_to_shrink: "Diga hasta dónde se ve en ella.",
};

const asSeen: CauseText = {
  text: "Hasta dónde se ve de verdad; de ahí sale la dispersión",
  how_to_shrink: "Mida la visibilidad a lo largo de un cabo.",
};
