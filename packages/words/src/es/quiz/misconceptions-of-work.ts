/** Respuesta a cada error sobre balance de blancos, focos, edición, montaje, cuidado y cámara: por qué está mal. */
import type { MisconceptionOfWork } from "../../quiz/misconceptions.js";

export const misconceptionsOfWork: Readonly<Record<MisconceptionOfWork, string>> = {
  warmer_for_higher_kelvin: "La luz que parece cálida tiene una temperatura de color baja.",
  preset_taken_for_light: "El valor Kelvin dice qué luz es blanca, no cómo se ve la imagen.",
  kelvin_always_fits:
    "La fórmula aún da un número aquí, pero esta luz está demasiado lejos de la de cualquier cuerpo incandescente para que los kelvin la describan.",
  kelvin_never_fits:
    "Esta luz está lo bastante cerca de la de un cuerpo incandescente para que un valor Kelvin la describa.",
  one_balance_for_all: "Eso valía para la luz con la que lo hizo. La luz cambia por el camino.",
  distance_shifts_balance: "Aquí la distancia al motivo no cambia, así que tampoco el agua de ese camino.",
  kelvin_of_surface: "Eso vale para la luz de la superficie. Aquí abajo la luz es de otro color.",
  depth_shifts_lamp_balance:
    "Con los focos de vídeo como única luz cuenta el agua entre el foco, el motivo y la cámara, no la profundidad.",
  every_metre_balanced:
    "A tanta profundidad queda poco rojo, y dos metros más apenas cambian el color de la luz del día.",
  balance_follows_time:
    "El tiempo solo no cambia nada. Un balance vale mientras la luz del motivo siga igual.",
  balance_follows_subject: "Un balance responde a la luz, no al color de aquello en lo que da.",
  balance_follows_exposure: "La exposición cambia todos los colores por igual. No cambia el blanco.",
  kelvin_subtracted:
    "Una diferencia en kelvin dice poco: 1000 K son mucho a 3000 K y poco a 9000 K. Con los mired se pueden comparar.",
  mired_sign_turned: "El signo está al revés: menos kelvin son más mired.",
  lamps_always_lead: "Lo que cuentan los focos de vídeo depende de cuánta luz del día queda.",
  daylight_always_leads:
    "Unos focos de vídeo cercanos pueden superar a la luz del día que queda a profundidad.",
  lights_blend_evenly: "Las dos luces están aquí lejos de ser iguales.",
  balance_mends_split:
    "Un solo ajuste para toda la imagen desplaza las dos luces por igual: su diferencia se queda.",
  blue_filter_everywhere:
    "Los filtros azules sirven para los focos en agua oceánica azul. El agua costera es verde.",
  green_filter_everywhere:
    "Los filtros verdes sirven para los focos en agua costera. El agua oceánica es azul.",
  red_filter_on_lamp:
    "Frente a la luz del día a profundidad, un foco de vídeo blanco ya tiene demasiado rojo. Un filtro rojo deja justo eso.",
  inverse_linear:
    "El haz crece a lo ancho y a lo alto, así que su luz baja más deprisa de lo que crece la distancia.",
  water_forgotten: "El agua del camino también se lleva su parte.",
  distance_forgotten: "El haz también se abre por el camino.",
  half_always_saved: "Decide el ruido, no una regla general: mire cuánto lo supera aquí el rojo.",
  grade_restores_all: "La corrección de color solo puede estirar lo que se registró.",
  red_lost_at_once: "El agua quita el rojo poco a poco, y a esta profundidad todavía llega bastante.",
  ring_turned_about: "Ese anillo tiene las roscas al revés, y a un anillo no se le puede dar la vuelta.",
  ring_order_swapped: "Los anillos están bien, el orden no: el primero tiene que encajar en el objetivo.",
  ring_same_size: "Una de sus dos roscas no encaja.",
  field_divided_by_index: "La refracción divide el seno del ángulo entre el índice, no el ángulo.",
  field_kept: "Un puerto plano refracta los rayos: en el agua, el objetivo ve menos.",
  field_widened: "Un puerto plano estrecha el campo: las cosas parecen más grandes.",
  tangent_taken_for_sine: "La ley de Snell va con el seno del ángulo, no con su tangente.",
  half_field_given: "Ese es el ángulo a un solo lado del eje.",
  glass_index_taken:
    "Un cristal plano desvía la luz al entrar y la devuelve al salir. Solo deciden el aire y el agua.",
  index_counted_twice: "El índice cuenta una vez, entre el agua y el aire.",
  whole_sheet_counted:
    "Solo cuenta una parte del grosor: la luz va más despacio por la lámina, no se detiene.",
  index_excess_used: "El factor es 1 - 1/n, no n - 1.",
  filter_goes_in_front: "Delante de este objetivo no hay sitio para un filtro plano.",
  fixed_filter_changed: "Lo que va dentro de la carcasa se queda como está toda la inmersión.",
  sealed_camera_opened: "Una cámara estanca sin carcasa se queda cerrada: a su objetivo no se puede llegar.",
  fixed_lens_opened: "Detrás de un objetivo que no se quita no se puede poner nada.",
  filter_before_dome: "Un filtro plano no asienta sobre un domo, y uno que abarcara su campo sería enorme.",
  lamp_tested_in_air:
    "Los focos hechos para bucear se refrigeran con el agua. En el aire se sobrecalientan, y pueden quemar o fundir un filtro de plástico.",
  lamp_pointed_at_eyes: "El haz puede dañar los ojos de buceadores y animales.",
  lamp_taken_off: "Quitar focos cambia el equilibrio del equipo en el agua.",
  housing_opened_wet:
    "Una gota de agua salada puede estropear la cámara y el filtro: una carcasa se abre solo en tierra y en seco.",
  order_of_dive_mixed:
    "Mire otra vez qué solo se puede hacer en seco y qué tiene que esperar a la profundidad.",
  frame_rate_as_time: "Ese es el tiempo de un fotograma entero. El obturador está abierto una parte de él.",
  shutter_always_half: "Ese sería el tiempo a 180°. Fíjese en el ángulo.",
  angle_turned_over: "Un ángulo menor acorta el tiempo, así que x crece.",
  frame_rate_alone_counts: "El ángulo también cambia, y con él el tiempo.",
  angle_alone_counts: "Los fotogramas por segundo también cambian, y con ellos el tiempo.",
  code_is_linear:
    "Una curva de vídeo levanta los tonos oscuros: los valores de código no son proporcionales a la luz.",
  grey_is_middle: "El centro del histograma es de un solo tono, no de cualquier tarjeta.",
  stop_halves_code:
    "Un paso deja la mitad de la luz. El valor de código baja menos, porque la curva está doblada.",
  underexposure_ignored: "Ahí queda con la exposición correcta.",
  values_shared_evenly: "Una grabación lineal reparte sus valores por luz, no por pasos.",
  stops_counted_from_dark: "El primer paso es el más claro.",
  halving_started_late: "El paso más claro se lleva la mitad de los valores, no todos.",
  values_halved_each_stop: "Una curva logarítmica le da a cada paso el mismo número de valores.",
  bits_taken_for_values: "Los bits no son valores: cada bit dobla su número.",
  ratio_for_stops: "Esa es la proporción. Los pasos cuentan cuántas veces se dobla.",
  difference_for_ratio: "Una ganancia multiplica, así que cuenta la proporción y no la diferencia.",
  loss_taken_for_factor: "Los pasos no son un factor: cada uno de ellos dobla.",
  stops_taken_for_factor: "Los pasos cuentan las veces que se dobla. No son el propio factor.",
  two_for_each_stop_added: "Cada paso dobla lo que había. No suma dos.",
  part_left_out: "Falta una parte: cada una se lleva lo suyo.",
  stops_multiplied: "Los pasos representan factores: se suman donde los factores se multiplican.",
  largest_part_alone: "Las partes pequeñas también se llevan luz.",
  auto_setting_confused: "Mire otra vez qué cambia cada automatismo mientras filma.",
  fault_confused: "Mire otra vez si se queda en su sitio, se mueve o cambia con el zoom y el enfoque.",
  deep_changes_most: "Abajo queda poco rojo que perder. Los grandes cambios están cerca de la superficie.",
  longest_way_changes_most: "No cuenta solo la longitud: cerca de la superficie, un metro cambia más.",
  colour_taken_for_grey: "Eso tiene un color propio, y el balance de blancos se lo quitaría a todo.",
  distance_does_not_count:
    "El agua de por medio también cuenta: a la mitad de distancia hay mucho menos backscatter.",
  farther_is_clearer: "Con más agua entre la cámara y el motivo se dispersa más luz.",
  filter_colour_of_loss:
    "A los focos les sobra lo que el agua ha quitado: el filtro tiene el color del agua.",
  first_dive_alone: "Ese filtro es el mejor en la primera inmersión. Cuentan las dos.",
  errors_added: "La pregunta pide la media de las dos inmersiones.",
  minutes_ignored: "Una inmersión en la que se filma más minutos cuenta más.",
  best_of_each_dive: "Para eso hacen falta dos filtros. Tiene uno para las dos inmersiones.",
  grade_fills_clipped: "Lo que se quemó no tiene tonos que recuperar.",
  tint_brings_red: "Un tinte lo vuelve todo igual de rojo. No distingue un motivo rojo de uno gris.",
  bits_bring_back:
    "Más bits describen con más finura la señal registrada. No contienen luz que no llegó al sensor.",
  grade_mends_split: "Una corrección mueve las dos luces juntas: su diferencia se queda.",
  grade_sharpens_smear: "El tiempo de exposición queda grabado con la imagen. Ninguna corrección lo quita.",
  shift_turned_about: "Eso es justo al revés.",
  new_balance_alone: "Eso es lo que haría un balance nuevo. El anterior ya ha hecho una parte.",
  lamp_beside_lens:
    "Un foco tan cerca del objetivo ilumina el agua de justo delante de él, con todos sus puntos.",
  beams_crossed:
    "Donde los haces se cruzan cerca del objetivo, iluminan los puntos que salen más grandes en la imagen.",
  haze_outshone: "Unos focos más fuertes aclaran los puntos tanto como el motivo.",
  iso_beats_haze: "El ISO sube los puntos y el motivo por igual.",
  filter_beats_haze: "Un filtro tiñe los puntos y el motivo por igual. No quita ninguno.",
  screwed_filter_outside: "El objetivo está dentro de la carcasa, y también lo que se enrosca en él.",
  light_goes_outwards: "La luz viene del agua: empiece por fuera.",
  water_does_not_count: "Un metro de agua turbia puede quitar más contraste que varios metros de agua clara.",
  depth_alone_counts: "El lado que filma tiene menos luz con el sol de frente, a cualquier profundidad.",
  side_alone_counts: "Los metros de agua también quitan luz.",
  low_sun_reaches_in: "Un sol bajo atraviesa más aire y más agua, y entra menos luz.",
  sky_alone_counts: "La altura del sol y la profundidad también cuentan.",
  sun_height_alone_counts: "Las nubes y los metros de agua también quitan luz.",
  dark_floor_lights_up: "Un fondo oscuro se queda con la luz que recibe.",
  floor_alone_counts: "El agua de por medio se lleva su parte: el mismo fondo añade menos si está más abajo.",
  height_alone_counts: "Un fondo oscuro no devuelve casi nada, por cerca que esté.",
  bits_take_noise:
    "El ruido viene con la luz y con el sensor. Unos escalones más finos lo describen con más exactitud.",
  sensor_full_comes_back: "Donde el sensor se llenó no se contó nada más, en ningún archivo.",
  channels_always_apart: "Una dominante separaría los canales.",
  histogram_belongs_right: "No se apiña en el extremo izquierdo, así que no es más luz lo que le falta.",
  histogram_belongs_left:
    "No hay casi nada pegado al extremo derecho, así que no es menos luz lo que necesita.",
  any_histogram_will_do: "Aquí hay algo mal: mire los extremos, y si los canales están juntos.",
  charged_unattended: "Una batería que falla mientras se carga puede provocar un incendio: quédese cerca.",
  battery_wetted:
    "El agua en el compartimento corroe los contactos y puede cortocircuitarlos. Solo se enjuaga el foco cerrado.",
  any_charger_fits:
    "El conector no dice nada de la tensión ni de la corriente: use el cargador del fabricante.",
  battery_heated: "El calor daña una batería y puede prenderle fuego.",
  flooded_battery_kept: "Ha entrado agua salada en las celdas: no la cargue nunca más.",
  contacts_left_bare: "Un metal entre los contactos los cortocircuita.",
};
