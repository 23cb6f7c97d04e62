/** Textos de las preguntas sobre seguridad y cuidado. Práctica habitual del oficio. */
import { small } from "../format.js";
import { series } from "./common.js";

export const safety = {
  safe_lamps: {
    stem: "¿Cuáles de estas cosas son buena práctica con focos de vídeo y filtros?",
    option: {
      on_in_water: "Encender los focos de vídeo solo cuando están bajo el agua",
      off_before_air: "Apagar los focos de vídeo antes de que salgan del agua",
      away_from_eyes: "Apuntar los focos de vídeo lejos de los ojos de buceadores y animales",
      stay_on_rig: "Dejar en el equipo focos y baterías que no se usan",
      rig_tried_out: "Probar un equipo cambiado primero en condiciones fáciles",
      filter_dry: "Cambiar un filtro de dentro de la carcasa solo en tierra y en seco",
      rinse: "Enjuagar y secar la carcasa antes de abrirla",
      practise_flip: "Practicar primero en la superficie cómo se baja y se aparta un filtro",
      beams_away: "Apartar los haces antes de mirar a otro buceador a la cara o de acercarse a un animal",
      dim_near_animals: "Atenuar el haz cerca de animales",
      hands_dry: "Abrir la carcasa solo en tierra y en seco, con su exterior, el pelo y las manos ya secos",
      warm_up: "Encender los focos en el aire para calentarlos",
      face_fish: "Acercar un foco a los ojos de un pez para verlo mejor",
      hand_in_air: "Probar el haz de un foco en la mano, en el aire, antes de la inmersión",
      open_wet: "Abrir la carcasa mientras está mojada",
      test_in_air:
        "Dejar los focos de vídeo encendidos en el aire unos minutos antes de la inmersión para calentarlos",
      shine_at_buddy: "Dirigir un foco de vídeo a la cara del compañero para llamar su atención",
      look_into: "Mirar de frente a un foco para ver si está encendido",
      leave_one_off: "Quitar en el barco un foco y su batería del equipo cuando no hacen falta",
      open_at_edge: "Abrir la carcasa en la orilla para ganar tiempo",
      filter_near_lamp: "Probar en el aire cómo queda un filtro de plástico en un foco encendido",
    },
    last: "Los focos hechos para bucear se encienden solo en el agua, apuntan lejos de los ojos y se quedan en el equipo. Las carcasas se abren secas y en tierra.",
  },
  order_of_dive: {
    stem: "Filma con luz del día y con un filtro de color dentro de la carcasa. Ponga estos pasos en orden, el primero arriba.",
    step: {
      mount: "Montar el filtro limpio con la carcasa seca y abierta",
      close: "Cerrar la carcasa y comprobar su junta",
      manual: "En la superficie, comprobar que la exposición y el balance de blancos están en manual",
      card: "A la profundidad a la que filma, hacer el balance de blancos con una tarjeta",
      again: "Más abajo, repetir el balance de blancos con la tarjeta",
      rinse: "Después de la inmersión, enjuagar la carcasa con agua dulce y secarla",
      open: "Abrir la carcasa seca y sacar el filtro",
    },
    last: (p: { order: string[] }) => `En orden: ${series(p.order.map(small))}.`,
  },
};
