/** Textos de las preguntas sobre la práctica con focos, soportes y grabaciones. */
import { capital, small } from "../format.js";
import { list, series } from "./common.js";

export const practice = {
  lamp_place: {
    stem: "En sus tomas se ven puntos claros por todas partes: backscatter de sus focos de vídeo. ¿Cuáles de estas cosas lo reducen?",
    option: {
      closer: [
        "Acercarse más al motivo",
        "Acercarse más al motivo, con la flotabilidad controlada, antes de filmar",
      ],
      arms: ["Brazos más largos para los focos", "Separar los focos a ambos lados con brazos más largos"],
      outward: [
        "Girar los haces algo hacia fuera",
        "Girar los haces algo hacia fuera, de modo que solo su borde ilumine el motivo",
      ],
      clear_of_sand: [
        "Mantener las aletas lejos de la arena",
        "Mantener las aletas lejos del fondo, para no levantar nada de arena",
      ],
      dim_by_day: [
        "Atenuarlos donde basta la luz del día",
        "Atenuar los focos, o apagarlos, donde basta la luz del día",
      ],
      behind_port: [
        "Retrasar los focos hasta detrás del puerto",
        "Retrasar los focos hasta que queden por detrás del frente del puerto",
      ],
      beside_lens: [
        "Los focos pegados al objetivo",
        "Montar los dos focos lo más cerca posible del objetivo",
      ],
      on_top: ["Un foco encima de la carcasa", "Un solo foco encima de la carcasa, recto hacia delante"],
      crossed: [
        "Cruzar los haces ante el objetivo",
        "Girar los haces hacia dentro, de modo que se crucen cerca del objetivo",
      ],
      brighter: [
        "Subir la potencia",
        "Subir la potencia de los dos focos, para que el motivo brille más que los puntos",
      ],
      back_off: [
        "Alejarse algunos metros",
        "Alejarse algunos metros, para que los puntos salgan más pequeños",
      ],
      iso: ["Subir el ISO", "Subir el ISO y dejar los focos como están"],
      red_filter: [
        "Un filtro rojo en el objetivo",
        "Un filtro rojo delante del objetivo, con los focos como están",
      ],
    },
    last: "Los puntos brillan donde un haz ilumina el agua de justo delante del objetivo: mantenga oscura esa agua, y corto el camino por ella.",
  },
  mount_order: {
    stem: "La luz va del agua al sensor. Ponga estas cosas en el orden en que se las encuentra, la primera arriba.",
    part: {
      swing_in: "Un filtro abatible por fuera del puerto",
      port: "El puerto de la carcasa",
      screwed: "Un filtro enroscado delante del objetivo",
      ring: "Un anillo adaptador entre ese filtro y el objetivo",
      lens: "Las lentes del objetivo",
      sheet: "Una lámina de filtro detrás del objetivo",
      sensor: "El sensor",
    },
    last: (p: { order: string[] }) =>
      `A profundidad solo se llega a lo que está por fuera del puerto. En orden: ${series(p.order.map(small))}.`,
  },
  recording_gain: {
    stem: {
      ten_bits: "Filma en 10 bits en vez de 8, con todo lo demás igual. ¿Cuáles de estas cosas gana?",
      raw: "Filma en raw, en 12 bits, en vez de en un vídeo de 8 bits, con todo lo demás igual. ¿Cuáles de estas cosas gana?",
    },
    option: {
      steps: ["Escalones de tono más finos", "Escalones más finos entre los tonos que se registraron"],
      stretch: [
        "Una corrección con menos bandas",
        "Margen para estirar un canal en la edición antes de que se vean bandas",
      ],
      later_balance: [
        "El balance de blancos en la edición",
        "Un balance de blancos que aún puede elegir en la edición",
      ],
      later_sharpening: ["La nitidez que usted elija", "La nitidez y la reducción de ruido que usted elija"],
      red: ["El rojo que quitó el agua", "La luz roja que quitó el agua antes de que llegara a la cámara"],
      noise: ["El rojo con la mitad de ruido", "La mitad de ruido en el canal rojo con la misma exposición"],
      clipped: [
        "Detalle donde el sensor se llenó",
        "Detalle en una arena tan clara que el propio sensor se llenó",
      ],
      smear: ["Movimiento nítido con poca luz", "Movimiento nítido donde el tiempo de exposición fue largo"],
      two_lights: [
        "Un mismo color para dos luces",
        "Un mismo color para la luz del día y unos focos de vídeo distintos",
      ],
    },
    at: (p: { depth: string; water: string }) => `En un motivo gris a ${p.depth} en ${p.water}`,
    figures: {
      ten_bits: (p: { scene: string; few: string; many: string; before: string; after: string }) =>
        `${p.scene}, un paso de rojo tiene ${p.many} valores de código en 10 bits y ${p.few} en 8. Su luz roja es ${p.before} veces el ruido en 8 bits y ${p.after} veces en 10.`,
      raw: (p: { scene: string; few: string; many: string; before: string; after: string }) =>
        `${p.scene}, un paso de rojo tiene ${p.many} valores de código en 12 bits y ${p.few} en 8. Su luz roja es ${p.before} veces el ruido en 8 bits y ${p.after} veces en 12.`,
    },
    last: "Más bits describen con más finura lo que recibió el sensor, y raw deja decisiones para después. Ninguno de los dos trae luz que no llegó.",
  },
  histogram_reading: {
    stem: (p: { depth: string; water: string }) =>
      `Filma una carta de color a ${p.depth} en ${p.water}, solo con luz del día. La figura muestra su histograma. ¿Qué hace primero?`,
    option: {
      cast: [
        "Hacer el balance de blancos",
        "Hacer el balance de blancos con una tarjeta: los canales están muy separados",
      ],
      under: ["Dar más luz", "Dar unos dos pasos más de luz: nada llega a la mitad derecha"],
      over: ["Dar menos luz", "Dar unos dos pasos menos de luz: hay mucho pegado al extremo derecho"],
      good: [
        "Nada: empezar a filmar",
        "Nada: la exposición y el balance de blancos están bien, así que a filmar",
      ],
    },
    read: (p: { channels: { name: string; middle: string; full: string }[] }) =>
      `${series(p.channels.map(({ name, middle, full }) => `${capital(name)}: la mitad queda por debajo de ${middle}, y en 255 está el ${full}`))}.`,
    last: {
      cast: "Un canal queda lejos de los otros: el blanco aún no es blanco, y eso lo arregla un balance de blancos.",
      under:
        "Todos los canales se apiñan en el extremo izquierdo: la imagen es demasiado oscura, y al subirla se verá ruido.",
      over: "Mucha imagen está pegada a 255: lo que se quema se queda sin tonos, así que dé menos luz.",
      good: "Los canales se superponen y llenan el centro, con casi nada en los extremos.",
    },
  },
  histogram: {
    title: "Histograma",
    xAxis: "Valor de código",
    yAxis: "Frecuencia, % de la mayor",
    alt: (p: { channels: { name: string; from: number; to: number; quarters: number[] }[] }) =>
      `Un histograma de tres canales. ${p.channels
        .map(
          ({ name, from, to, quarters }) =>
            `El ${name} va de ${from} a ${to} de 255, y sus cuartos acaban en ${list(quarters.map(String))}.`,
        )
        .join(" ")}`,
  },
};
