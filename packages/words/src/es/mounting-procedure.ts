import type { MountingSteps } from "@sunfathom/planner";
import type { Texts } from "../problems/texts.js";

/** Cómo se monta un filtro. Práctica habitual. */
export const mountingProcedure: Texts<MountingSteps, string> = {
  cut_practice: () =>
    "Practique el corte con una gelatina de iluminación barata hasta que encaje sin forzar y sin huecos.",
  cut_sheet: () =>
    "Corte la lámina del filtro entre papel limpio con una cuchilla afilada, y tóquela solo por los bordes.",
  slide_in: () =>
    "Sóplela hasta que quede limpia e introdúzcala bien plana en el soporte de detrás del objetivo.",
  tape_on: () =>
    "Sóplela hasta que quede limpia y péguela bien plana sobre la abertura. Que la cinta no llegue a los contactos eléctricos ni a las caras de apoyo de la montura.",
  tape_renew: () =>
    "Ponga cinta nueva para cada viaje, y quite los restos de la vieja: el calor y la humedad la despegan.",
  refocus: () =>
    "Enfoque de nuevo con la lámina puesta, y compruebe bajo el agua, a la profundidad de trabajo, la nitidez de las primeras imágenes.",
  sheet_set: () =>
    "Guarde la lámina con el filtro de cristal de la misma densidad, para que el juego no se separe.",
  sheet_renew: () =>
    "Revise la lámina antes de cada viaje, y cámbiela si está rayada, descolorida o combada.",
  dry_land_only: () => "Cámbiela solo en tierra y en seco, lejos de la arena y las salpicaduras.",
  chain_assemble: () =>
    "Enrosque los anillos a mano, en el orden indicado y sin forzar; una pizca de grasa de silicona evita que se agarroten.",
  wall_test: () =>
    "Fotografíe una pared blanca con el mayor ángulo y el diafragma más cerrado, y mire las esquinas.",
  clear_of_port: () =>
    "Introduzca el objetivo despacio en la carcasa, y compruebe antes de cerrarla que nada toca el puerto.",
  no_grit: () =>
    "Enjuague el filtro y la ventana antes de poner el filtro: la arena entre los dos los raya a ambos.",
  no_bubbles: () =>
    "Ya en el agua, quite el filtro o inclínelo para que salga el aire que queda entre él y la ventana.",
  tether: () => "Sujete el filtro con un cabo corto para no perderlo.",
  change_practised: () => "Practique el cambio en la superficie, con guantes si los lleva.",
  rinse: () =>
    "Después de la inmersión, enjuague el filtro y el soporte con agua dulce, y séquelos por separado.",
};
