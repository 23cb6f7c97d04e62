/** Respuesta a cada error sobre el agua, los filtros y la exposición: por qué está mal. Detrás va el paso que faltó, con las cifras de la pregunta. */
import type { MisconceptionOfLight } from "../../quiz/misconceptions.js";

export const misconceptionsOfLight: Readonly<Record<MisconceptionOfLight, string>> = {
  all_colours_fade_alike:
    "Eso es lo que queda de la claridad. El agua quita cada color a su ritmo, y en agua clara el rojo es el que antes se va.",
  channel_confused: "Esa cifra es de otro color.",
  loss_per_metre_subtracted:
    "Cada metro se lleva una parte de lo que queda, no de lo que entró por la superficie.",
  share_lost_counted: "Eso cuenta la luz que se pierde. Los pasos cuentan lo que queda.",
  water_taken_for_clearer: "En un agua más clara quedaría más.",
  water_taken_for_more_turbid: "En un agua más turbia quedaría menos.",
  stop_miscounted: "Eso es un paso de más o de menos.",
  stops_taken_for_tenths: "Un paso deja la mitad de la luz. No deja una décima parte.",
  share_by_proportion:
    "La luz no baja en proporción a la profundidad: se reduce a la mitad, y otra vez a la mitad.",
  stops_as_divisor:
    "Dividir entre el número de pasos no es lo mismo que dividir entre dos una vez por cada paso.",
  first_metre_everywhere:
    "El primer metro se lleva las ondas rojas más largas. Lo que queda baja más despacio.",
  depth_misread: "Esa es la cifra de otra profundidad.",
  longest_red_for_all: "Las ondas rojas más largas se van primero. Las más cortas llegan más abajo.",
  way_counted_twice: "La luz del día recorre ese camino una vez, no dos.",
  logarithm_to_ten: "Eso cuenta potencias de diez, y los pasos son potencias de dos.",
  order_by_wavelength:
    "Los colores no desaparecen sin más de las ondas largas a las cortas: el violeta se va a menudo antes que el azul o el verde, y el agua costera también quita pronto el azul.",
  order_reversed: "Ese es el orden correcto, al revés.",
  blue_lasts_everywhere:
    "El azul es el que más dura en agua oceánica clara. El agua costera también quita el azul.",
  red_reaches_deepest: "El agua quita primero el rojo y el naranja.",
  curve_misread: "Ahí la curva está más baja.",
  tenth_taken_for_half: "Ahí queda la mitad, no una décima parte.",
  tenth_taken_for_hundredth: "Ahí queda una centésima parte, no una décima.",
  brightness_taken_for_red:
    "La claridad viene sobre todo del verde y del azul, que llegan más abajo que el rojo.",
  red_filter_everywhere:
    "El rojo frena por igual el verde y el azul: vale la pena en agua azul y con luz de sobra, no en cualquier agua.",
  magenta_filter_everywhere:
    "El magenta frena el verde y deja pasar el azul: vale la pena donde solo el verde es demasiado fuerte y sobra luz.",
  filter_never_pays:
    "Aquí un filtro vale la pena: sin él, el verde y el azul llenan el sensor antes de que el rojo esté bien expuesto.",
  filter_adds_light: "Un filtro solo quita luz. No puede añadir ninguna.",
  density_is_stops:
    "La densidad cuenta potencias de diez y los pasos cuentan mitades. No son el mismo número.",
  density_taken_linearly:
    "Cada aumento igual de densidad multiplica por el mismo factor. No suma la misma cantidad.",
  density_is_factor: "Diez elevado a la densidad es el factor del filtro. No es ni la densidad ni los pasos.",
  densities_multiplied:
    "Lo que se multiplica es la parte de la luz que deja pasar cada filtro, no la densidad.",
  densest_filter_counts: "El filtro más débil también se lleva su parte.",
  densest_filter_doubled: "El filtro más débil se lleva menos que el más denso.",
  densities_averaged: "La luz pasa por un filtro después del otro, y cada uno se lleva su parte.",
  transmittances_added: "Dos filtros dejan pasar menos que uno, nunca más: las partes se multiplican.",
  absorptions_added: "El segundo filtro solo puede quitar de lo que deja pasar el primero.",
  red_loss_alone: "El verde también ha perdido luz. Solo hay que compensar la diferencia.",
  filter_costs_green_alone: "El filtro también quita algo de rojo.",
  losses_added_for_difference: "Aquí cuenta la diferencia, no la suma.",
  iso_added_per_stop: "El paso siguiente no suma otra vez la misma cantidad.",
  iso_lowered_for_loss: "Con menos luz hace falta un ISO más alto. Esa respuesta baja.",
  iso_by_density: "Una densidad no es un factor. Lo es diez elevado a la densidad.",
  f_number_halved_per_stop:
    "Con la mitad del número f se ganan dos pasos, porque el área de la abertura crece con el cuadrado.",
  f_number_by_factor:
    "La luz va con el cuadrado del número f, así que cuenta la raíz del factor, no el factor.",
  f_number_raised_for_light: "Un número f más alto es una abertura más pequeña y deja entrar menos luz.",
  f_number_less_stops: "Los números f no cuentan en pasos: no se les pueden restar pasos.",
  stop_counted_too_many: "El número f del que parte no cuenta como paso.",
  light_factors_added: "Cada paso vuelve a doblar la luz. No suma la misma cantidad.",
  thirds_taken_for_stops:
    "Los diales suelen ir por tercios de paso: eso es solo la tercera parte del camino.",
  iso_adds_light: "El ISO amplifica lo que se registró. No lleva luz al sensor.",
  balance_adds_light:
    "El balance de blancos multiplica la señal roja junto con su ruido. No lleva luz al sensor.",
  grade_adds_light: "La edición trabaja con lo que se registró. No lleva luz al sensor.",
  exposure_turned_wrong: "Eso va en el sentido contrario al que hace falta aquí.",
  step_too_small: "Eso va en el sentido correcto, pero es menos de un paso.",
  turns_cancel: "Los dos cambios se anulan: la exposición se queda como estaba.",
  one_way_only: "La luz pasa por el agua dos veces: del foco al motivo y del motivo a la cámara.",
  depth_counted_for_lamps:
    "Su luz no baja de la superficie: el camino que recorre es el mismo a cualquier profundidad.",
};
