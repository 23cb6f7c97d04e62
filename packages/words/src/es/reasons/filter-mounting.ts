import type { FilterMountingReasons, PupilBasis, StepRing } from "@sunfathom/planner";
import type { Texts } from "../../problems/texts.js";
import { distance, near, percent, plural, shown, unit } from "../format.js";
import { mountingHolders } from "../mounting-holders.js";

const mm = (value: number, decimals = 1): string => unit(shown(value, decimals), "mm");

/** Razones sobre dónde va un filtro. */
export const filterMountingReasons: Texts<FilterMountingReasons, string> = {
  mount_asked_does_not_fit: (p) =>
    `Lo que pidió, ${mountingHolders[p.asked]}, no encaja en esta cámara. Use en su lugar ${mountingHolders[p.instead]}.`,
  mount_nothing_fits: () =>
    "Tal como está, no encaja ningún soporte; las razones de abajo dicen qué tendría que cambiar.",
  mount_no_room_for_two: () =>
    "El filtro ND se queda en tierra: junto con el filtro de color no cabe, o las esquinas quedan oscuras.",

  mount_on_lens: () =>
    "El filtro se enrosca en el objetivo, dentro de la carcasa: en el aire y a salvo de golpes, pero fijo durante toda la inmersión.",
  mount_outside_fixed: () =>
    "El filtro va en el agua, delante de la ventana plana, y se queda puesto toda la inmersión.",
  mount_outside_changed: () =>
    "El filtro va en el agua, delante de la ventana plana, donde puede apartarlo, o quitarlo y volver a ponerlo, durante la inmersión.",
  mount_over_window: () =>
    "Un marco hecho para esta cámara sujeta el filtro sobre su ventana, cerca del objetivo.",
  mount_behind_lens: () =>
    "Una lámina detrás del objetivo no necesita sitio delante: sirve con lentes frontales abombadas y con cualquier domo, y no tiene borde que oscurezca las esquinas. Se queda puesta toda la inmersión.",

  mount_window_is_port: () =>
    "En esta cámara, la propia ventana hace de puerto: no se puede llegar a ningún objetivo de dentro.",
  mount_front_bulges: () =>
    "La lente frontal de un ojo de pez es abombada y no deja sitio para una rosca: el filtro va detrás del objetivo.",
  mount_lens_without_thread: () => "El objetivo no tiene rosca para filtros: no se le puede enroscar nada.",
  mount_field_too_wide: (p) =>
    `El objetivo ve ${shown(p.field_deg)} grados: ningún filtro plano delante de él es lo bastante grande. El filtro va detrás del objetivo.`,
  mount_hits_dome: (p) =>
    `Con la pupila de entrada en el centro del domo, el borde y el domo se solaparían ${mm(-p.clearance_mm, 0)}: detrás de este domo no hay sitio para este filtro.`,
  mount_near_dome: (p) =>
    `Entre el borde y el domo hay un espacio libre de solo ${mm(p.clearance_mm, 0)} más o menos: pruébelo despacio y a mano antes de cerrar la carcasa.`,
  mount_hits_port: (p) =>
    `Con el zoom en su posición más larga, el borde del filtro entraría ${mm(-p.clearance_mm)} en el puerto: en este objetivo no hay sitio para él.`,
  mount_near_port: (p) =>
    `Con el zoom en su posición más larga hay un espacio libre de solo ${mm(p.clearance_mm)} delante del puerto: pruébelo despacio y a mano antes de cerrar la carcasa.`,
  mount_zoom_room_unknown: (p) =>
    `El objetivo se alarga ${mm(p.travel_mm)} con el zoom. Si el filtro toca entonces el puerto, solo lo dice \`lens_port_gap_mm\` o una prueba a mano.`,
  mount_wet_lens_in_the_way: (p) =>
    `La ${WET_LENSES[p.wet_lens]} va en el puerto, donde iría este soporte. Use solo una de las dos cosas.`,
  mount_wet_lens_stacked: (p) =>
    p.wet_lens === "wide"
      ? `Entre el puerto y la lente húmeda angular, el filtro separa esa lente ${mm(p.thickness_mm)} del puerto, lo que oscurece las esquinas y le quita nitidez. Pruébelo con una foto de una pared, en el agua.`
      : `Enrosque primero el filtro en el puerto y la lente de aproximación en el filtro. El filtro adelanta esa lente ${mm(p.thickness_mm)}: compruebe que las roscas aguantan el peso de los dos.`,
  wet_lens_not_on_dome: () =>
    "Una lente húmeda va en un puerto plano: aquí se supone que el domo se usa sin ella.",
  mount_not_before_dome: () =>
    "Un filtro plano no asienta sobre un domo, y uno que abarcara su campo sería enorme. Con un domo, el filtro va dentro.",
  mount_port_without_thread: () =>
    "No se conoce ninguna rosca por fuera de este puerto, así que no se le puede enroscar un filtro.",
  mount_flip_seat_unknown: () =>
    "No se conoce ninguna rosca por fuera de este puerto. Asegúrese de que el portafiltros abatible se puede fijar en él, o indique `port_thread_mm` o `port_outer_diameter_mm`.",
  mount_clip_seat_unknown: () =>
    "Sin el diámetro exterior del puerto no se puede saber si un clip se sujeta en él. Mídalo e indique `port_outer_diameter_mm`.",
  mount_frame_for_housing: () =>
    "El marco tiene que estar hecho para la carcasa de buceo de esta cámara: el de la cámara sola no encaja sobre ella. Pruébelo antes del viaje.",
  mount_holder_too_small: (p) =>
    `El soporte mide ${mm(p.inner_mm)} por dentro y el puerto ${mm(p.port_mm)} por fuera: no entra en él.`,
  mount_holder_too_large: (p) =>
    `El soporte mide ${mm(p.inner_mm)} por dentro y el puerto ${mm(p.port_mm)} por fuera: no se sujeta.`,
  mount_holder_loose: (p) =>
    `El soporte es ${mm(p.inner_mm - p.port_mm)} más ancho que el puerto: fórrelo con goma hasta que se sujete, y asegúrelo con un cabo.`,
  mount_holder_to_ask_for: (p) => `Pida un soporte para un puerto de ${mm(p.port_mm)} de diámetro exterior.`,
  mount_dome_room_unknown: () =>
    "Sin el radio del domo no se sabe qué sitio queda entre el borde y el domo. Pruébelo despacio y a mano, o indique `dome_radius_mm`.",
  mount_not_an_action_camera: () =>
    "Los marcos están hechos para cámaras de acción y sus carcasas, no para el puerto de una cámara más grande.",
  mount_lens_stays_on: () =>
    "El objetivo de esta cámara no se puede quitar: detrás de él no se puede poner nada.",
  mount_fixed_for_dive: () =>
    "Ahí no puede cambiar el filtro bajo el agua: elija uno que sirva para todas las profundidades del recorrido.",
  mount_other_change: (p) => `Ahí el filtro se cambia ${CHANGES[p.allowed]}, no como usted pidió.`,

  rings_not_needed: (p) =>
    `El filtro y la montura tienen los dos una rosca de ${mm(p.thread_mm)}: no hace falta ningún anillo.`,
  rings_filter_thread_assumed: (p) =>
    `No indicó la rosca del filtro; se suponen ${mm(p.thread_mm)}, como en la montura.`,
  rings_close: (p) =>
    `Sus anillos adaptadores llegan hasta el filtro: ${p.rings.map(ring).join(", después ")}. ${plural(p.rings.length, { one: "Lo adelanta", other: "Juntos lo adelantan" })} ${mm(p.thickness_mm)}. Ninguna otra cadena de ellos es más ancha.`,
  rings_missing: (p) =>
    `Con sus anillos adaptadores no se llega de ${shown(p.from_mm, 1)} a ${mm(p.to_mm)}. Consiga un anillo que se enrosque en ${mm(p.from_mm)} y reciba ${mm(p.to_mm)}. Las cifras de las esquinas suponen que tiene 3 mm de grosor.`,
  rings_too_thick: (p) =>
    `Con sus anillos adaptadores se llega de ${shown(p.from_mm, 1)} a ${mm(p.to_mm)}, pero recortan las esquinas. Consiga un anillo fino que se enrosque en ${mm(p.from_mm)} y reciba ${mm(p.to_mm)}. Las cifras de las esquinas suponen que tiene 3 mm de grosor.`,
  rings_wrong_way: (p) =>
    `El anillo ${p.id} une las mismas medidas al revés (se enrosca en ${mm(p.from_mm)} y recibe ${mm(p.to_mm)}): un anillo no se puede dar la vuelta.`,
  rings_narrow: (p) =>
    `La cadena se estrecha hasta ${mm(p.narrowest_mm)}, menos que el objetivo y el filtro, y oscurece las esquinas. Sería mejor un solo anillo de ${shown(p.from_mm, 1)} a ${mm(p.to_mm)}.`,
  rings_step_down: (p) =>
    `Un filtro de ${mm(p.to_mm)} en una montura de ${mm(p.from_mm)} necesita un anillo reductor (step-down), que oscurece las esquinas. Es mejor comprar un filtro tan ancho como la montura, o más.`,

  corners_clear: (p) =>
    `El filtro y los anillos dejan un ${percent(p.light_percent)} de la luz en la esquina: el campo está despejado hasta ${shown(p.clear_half_deg)} grados del eje, y la esquina está a ${shown(p.corner_half_deg)}.`,
  corners_slight: (p) =>
    `El filtro y los anillos dejan un ${percent(p.light_percent)} de la luz en el extremo de la esquina; hasta ${shown(p.clear_half_deg)} grados del eje está todo despejado. Apenas se nota.`,
  corners_dark: (p) =>
    `El filtro y los anillos oscurecen las esquinas: ahí queda un ${percent(p.light_percent)} de la luz. Hasta ${shown(p.clear_half_deg)} grados del eje está todo despejado; la esquina está a ${shown(p.corner_half_deg)}.`,
  corners_black: (p) =>
    `Es probable que el filtro y los anillos recorten las esquinas: el campo está despejado solo hasta ${shown(p.clear_half_deg)} grados del eje, y la esquina está a ${shown(p.corner_half_deg)}. Hace falta un diámetro libre de ${mm(p.clear_diameter_needed_mm, 0)}.`,
  corners_close: (p) =>
    `Va justo: si la pupila de entrada está más atrás de lo probable, en la esquina queda solo un ${percent(p.least_light_percent)} de la luz. Un diámetro libre de ${mm(p.clear_diameter_safe_mm, 0)} basta incluso entonces.`,
  corners_unknown: (p) =>
    `No indicó el diámetro libre del filtro: con unos ${mm(p.clear_diameter_needed_mm, 0)}, las esquinas quedan despejadas.`,
  corners_test: () =>
    "Los fabricantes casi nunca publican dónde está la pupila de entrada, y se mueve con el ángulo. Fotografíe una pared blanca con el mayor ángulo y el diafragma más cerrado: así se ve lo que ocurre de verdad.",
  pupil_distance_assumed: (p) =>
    `Se supone que la pupila de entrada está ${mm(p.distance_mm, 0)} por detrás del filtro, con un margen del ${percent(p.spread_percent)}, ${PUPIL_ASSUMED_FROM[p.from]}.`,
  format_assumed: (p) =>
    `Se supone una diagonal del sensor de ${mm(p.diagonal_mm)}: indique sensor_diagonal_mm para estar más seguro de las esquinas.`,

  flat_port_narrows: (p) =>
    `La ventana plana convierte ${shown(p.field_in_air_deg)} grados en el aire en ${shown(p.field_in_water_deg)} en el agua: todo parece un ${percent(p.enlarged_percent)} más grande y a tres cuartos de su distancia.`,
  dome_keeps_field: () =>
    "Con la pupila de entrada del objetivo en su centro, el domo conserva el ángulo de visión.",
  dome_brings_near: (p, u) =>
    `Detrás de este domo, hasta lo más lejano aparece a ${near(p.from_vertex_mm, u)} delante del cristal, a ${near(p.from_centre_mm, u)} de su centro: el objetivo tiene que enfocar así de cerca.`,

  ghosts_inside: (p) =>
    `El filtro y el objetivo reflejan entre sí las luces fuertes, al menos ${shown(p.in_air_stops)} pasos más débiles: puede verse un reflejo fantasma del sol o de un foco que salga en la imagen. Un filtro con tratamiento antirreflejos lo debilita.`,
  ghosts_outside: (p) =>
    `Con agua entre el filtro y la ventana, los reflejos fantasma de las luces fuertes son ${shown(p.in_water_stops)} pasos más débiles y no se ven. Con aire de por medio son solo ${shown(p.in_air_stops)} pasos más débiles.`,
  filter_weighs: (p) =>
    `Un filtro de este tamaño de ${MATERIALS[p.material]} pesa en el agua unos ${shown(p.weight_g)} g, sin el soporte.`,

  sheet_shifts_focus: (p) =>
    `La lámina desplaza la imagen ${mm(p.shift_mm, 3)} hacia atrás. El autofoco lo compensa. Si enfoca por la escala, el desenfoque es de ${mm(p.blur_mm, 4)}, cuando lo habitual es admitir ${mm(p.allowed_mm, 3)}.`,
  sheet_all_in_reach: (p, u) =>
    `No pierde nada en el infinito: detrás de este domo nada aparece más lejos de ${near(p.from_centre_mm, u)}, de sobra dentro de lo que el objetivo enfoca con la lámina.`,
  sheet_infinity_hidden: (p, u) =>
    `Un objetivo con tope en el infinito enfoca con la lámina hasta ${distance(p.farthest_m, u)}; más allá, el desenfoque queda dentro de la profundidad de campo.`,
  sheet_infinity_lost: (p, u) =>
    `Un objetivo con tope en el infinito enfoca con la lámina solo hasta ${distance(p.farthest_m, u)}, y más allá desenfoca ${mm(p.blur_mm, 3)}: cierre el diafragma, use una lámina más fina o asegúrese de que el objetivo gira más allá del infinito.`,
  sheet_focus_unknown: () =>
    "Sin el radio del domo no se puede saber si el objetivo aún enfoca con la lámina: indique `dome_radius_mm`.",
  sheet_measure_opening: () =>
    "Mida la abertura de detrás del objetivo, o la ranura del soporte, para saber a qué tamaño cortar.",
  sheet_cut: (p) => `Corte la lámina a ${shown(p.width_mm, 1)} por ${mm(p.height_mm)}.`,
};

const PUPIL_ASSUMED_FROM: Readonly<Record<PupilBasis, string>> = {
  thread: "como en los objetivos de este tipo, pensados para un filtro corriente",
  sensor: "estimada por el tamaño de la imagen en el sensor",
  window: "justo detrás de la ventana, como en las cámaras pequeñas",
};

const CHANGES = { flip: "abatiéndolo", clip_on: "quitándolo y volviéndolo a encajar" } as const;

const ring = ({ id, from_mm, to_mm }: Pick<StepRing, "id" | "from_mm" | "to_mm">): string =>
  `${id} (de ${size(from_mm)} a ${unit(size(to_mm), "mm")})`;

const size = (value: number): string => shown(value, Number.isInteger(value) ? 0 : 1);

const WET_LENSES = { wide: "lente húmeda angular", close_up: "lente húmeda de aproximación" } as const;

const MATERIALS = { glass: "cristal", resin: "resina" } as const;
