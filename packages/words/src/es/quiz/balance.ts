/** Textos de las preguntas sobre el balance de blancos. */
import { BY_COLOUR, type FilterColour } from "./colours.js";
import { list } from "./common.js";

const SPONGES = { red: "roja", yellow: "amarilla", purple: "morada" };

export const balance = {
  when_to_balance: {
    stem: "Ha hecho el balance de blancos con una tarjeta y sigue filmando. Su cámara puede repetirlo a cualquier profundidad. ¿Después de cuáles de estas cosas tiene que hacerlo otra vez?",
    option: {
      descend: (p: { from: string; to: string; water: string }) => [
        `Con luz del día, baja de ${p.from} a ${p.to} en ${p.water}`,
        `Con luz del día, baja desde ${p.from} hasta ${p.to}`,
      ],
      little: (p: { from: string; to: string; water: string }) =>
        `Con luz del día, baja de ${p.from} a ${p.to} en ${p.water}`,
      ascend: (p: { from: string; to: string; water: string }) => [
        `Con luz del día, sube de ${p.from} a ${p.to} en ${p.water}`,
        `Con luz del día, sube desde ${p.from} hasta ${p.to}`,
      ],
      lamps_on: (p: { depth: string; distance: string; water: string }) =>
        `A ${p.depth} en ${p.water}, enciende focos de vídeo potentes a ${p.distance} del motivo`,
      filter_on: (p: { kind: FilterColour }) => [
        `Coloca un filtro ${BY_COLOUR[p.kind]} delante del objetivo`,
        `Coloca un filtro ${BY_COLOUR[p.kind]} delante del objetivo y filma el mismo motivo desde el mismo sitio`,
      ],
      level: (p: { depth: string; minutes: number }) => [
        `Con luz del día, recorre el arrecife a ${p.depth} durante ${p.minutes} minutos bajo el mismo cielo`,
        `Sigue a ${p.depth} bajo el mismo cielo`,
      ],
      night_descend: (p: { from: string; to: string }) =>
        `De noche, solo con la luz de sus focos de vídeo, baja de ${p.from} a ${p.to} y mantiene la distancia al motivo`,
      subject: (p: { colour: keyof typeof SPONGES }) => [
        `Su motivo siguiente es una esponja ${SPONGES[p.colour]} en la misma luz`,
        `Su motivo siguiente es una esponja ${SPONGES[p.colour]}, algo más allá en el arrecife, a la misma profundidad y en la misma luz`,
      ],
      iso: (p: { from: string; to: string }) => [
        `Cambia de ${p.from} a ${p.to}`,
        `Cambia de ${p.from} a ${p.to}, porque las últimas imágenes han salido más oscuras de lo que quería`,
      ],
    },
    feedback: {
      descend: "Ahora tiene más agua encima, y con ella la luz del día es de otro color.",
      ascend: "Ahora tiene menos agua encima, y le llega más rojo del que espera el balance de blancos.",
      lamps_on: "Ahora mandan los focos de vídeo, y su luz es de otro color que la del día a profundidad.",
      filter_on: "El filtro cambia el color de toda la luz que llega al sensor.",
    },
    last: "Un balance de blancos vale mientras no cambie de color la luz que llega al sensor desde una tarjeta blanca.",
  },
  lamp_only_balance: {
    stem: {
      night: (p: { depth: string; distance: string; kelvin: string }) =>
        `En una inmersión nocturna hasta ${p.depth}, dos focos de vídeo de ${p.kelvin} son su única luz. Lo filma todo desde ${p.distance}, con los focos al lado de la cámara. ¿Qué basta para que el blanco siga siendo blanco?`,
      moving: (p: { near: string; far: string; water: string; kelvin: string }) =>
        `En una inmersión nocturna en ${p.water}, dos focos de vídeo de ${p.kelvin} son su única luz. Filma un cangrejo desde ${p.near} y después parte de un pecio desde ${p.far}, con los focos al lado de la cámara. ¿Qué hace falta para que el blanco siga siendo blanco?`,
      day: (p: { from: string; to: string; distance: string; water: string }) =>
        `De día baja por un talud de ${p.from} a ${p.to} en ${p.water} y filma solo con luz del día, siempre desde ${p.distance}. ¿Qué hace falta para que el blanco siga siendo blanco?`,
    },
    option: {
      once: [
        "Un balance de blancos con tarjeta, al empezar",
        "Un solo balance de blancos, con una tarjeta donde empieza a filmar, para toda la inmersión",
      ],
      depth: [
        "Un balance de blancos con tarjeta, que se repite al cambiar de profundidad",
        "Otro balance de blancos a otra profundidad",
      ],
      distance: [
        "Un balance de blancos con tarjeta, que se repite al cambiar la distancia al motivo",
        "Otro balance de blancos a otra distancia",
      ],
      surface: [
        "El balance de blancos de la superficie",
        "El balance de blancos que valía con luz del día en la superficie, para toda la inmersión",
      ],
    },
    loss: (p: { red: string; green: string; blue: string }) =>
      `El agua entre el foco, el motivo y la cámara quita ${p.red} de rojo, ${p.green} de verde y ${p.blue} de azul, a cualquier profundidad.`,
    losses: (p: { near: string; far: string; nearMore: string; farMore: string }) =>
      `Desde ${p.near}, el agua del camino quita ${p.nearMore} más de rojo que de verde; desde ${p.far}, quita ${p.farMore} más.`,
    depths: (p: { depths: string[] }) =>
      `Toca repetir el balance en cuanto una tarjeta blanca muestra una dominante notable: aquí, más o menos a ${list(p.depths)}.`,
    last: {
      night:
        "Toda la luz la ponen los focos, y su camino por el agua no cambia: basta un balance con una tarjeta a la distancia a la que filma.",
      moving:
        "Toda la luz la ponen los focos, pero desde más lejos atraviesa más agua, que quita más rojo: repita el balance a la nueva distancia.",
      day: "La luz del día cambia de color con el agua que tiene encima: repita el balance al bajar.",
    },
  },
  kelvin_order: {
    stem: "Estos focos de vídeo de luz blanca tienen distinta temperatura de color. Ordénelos, con la luz más roja arriba y la más azul abajo.",
    presetStem: (p: { light: string }) =>
      `De noche ilumina de cerca una pizarra blanca con un foco de vídeo de ${p.light} y la filma con distintos valores Kelvin del balance de blancos. Ordene los valores según cómo se ve la pizarra, con la imagen más azul arriba y la más roja abajo.`,
    preset: (p: { kelvin: string }) => `Valor de ${p.kelvin}`,
    presetRule:
      "El valor le dice a la cámara qué luz tiene que tomar por blanca. La cámara compensa la luz que espera: con un valor bajo espera luz rojiza, y la imagen sale azul.",
    presetLast: (p: { order: string[] }) =>
      `Cuanto más alto es el valor, más roja sale la imagen. De la más azul a la más roja: ${list(p.order)}.`,
    entry: (p: { kelvin: string }) => `Foco de vídeo de ${p.kelvin}`,
    last: (p: { order: string[] }) =>
      `Cuanto más alta es la temperatura de color, más azul es la luz. De la más roja a la más azul: ${list(p.order)}.`,
  },
  kelvin_meaning: {
    stem: {
      deep: (p: { scene: string; depth: string }) =>
        `${p.scene} Filma solo con luz del día a ${p.depth}, sin tarjeta. ¿Qué valor Kelvin describe esta luz?`,
      shallow: (p: { scene: string; depth: string }) =>
        `${p.scene} Filma solo con luz del día a ${p.depth}, sin tarjeta. ¿Qué valor Kelvin describe esta luz?`,
    },
    meterStem: (p: { depth: string; kelvin: string; duv: string }) =>
      `A ${p.depth}, un termocolorímetro mide ${p.kelvin} con luz del día, y una distancia de ${p.duv} a los colores de los cuerpos incandescentes (Duv). ¿Qué valor Kelvin describe esta luz?`,
    bluer: (p: { surface: string }) =>
      `El agua de encima ha quitado algo de rojo, así que la luz es más azul que los ${p.surface} de la superficie: su valor Kelvin es más alto.`,
    option: {
      none: [
        "Ningún valor Kelvin",
        "Ninguno: el color de esta luz no corresponde a ningún valor Kelvin, porque está demasiado lejos del blanco",
      ],
      number: (p: { kelvin: string }) => [`${p.kelvin}`, `${p.kelvin}, puesto a mano como valor Kelvin fijo`],
    },
    distance: (p: { x: string; y: string; duv: string }) =>
      `La luz tiene la cromaticidad x = ${p.x}, y = ${p.y}, que está a ${p.duv} de los colores de los cuerpos incandescentes (Duv).`,
    last: {
      none: "Con un Duv de más de 0,05, una temperatura de color no significa nada (CIE). Use una tarjeta: le muestra a la cámara la luz tal como es.",
      number: (p: { kelvin: string }) =>
        `Está lo bastante cerca para que una temperatura de color signifique algo (Duv de hasta 0,05, CIE): unos ${p.kelvin}.`,
    },
  },
  mired_shift: {
    stem: (p: { from: string; to: string }) =>
      `¿Qué desplazamiento en mired convierte una luz de ${p.from} en una de ${p.to}? Un desplazamiento hacia una luz más cálida cuenta como positivo.`,
    filterStem: (p: { from: string; shift: string }) =>
      `A un foco de vídeo de ${p.from} se le pone un filtro con un desplazamiento de ${p.shift} mired (positivo es más cálido). ¿Qué temperatura de color tiene entonces?`,
    each: (p: { from: number; to: number; fromMired: string; toMired: string }) =>
      `1 000 000 / ${p.from} = ${p.fromMired} mired y 1 000 000 / ${p.to} = ${p.toMired} mired.`,
    last: (p: { fromMired: string; toMired: string; shift: string; rounded: string }) =>
      `El desplazamiento es la diferencia: ${p.toMired} - ${p.fromMired} = ${p.shift} mired, redondeados a ${p.rounded} mired.`,
    added: (p: { from: number; fromMired: string; shift: string; sum: string }) =>
      `1 000 000 / ${p.from} = ${p.fromMired} mired. Con el desplazamiento: ${p.fromMired} + (${p.shift}) = ${p.sum} mired.`,
    back: (p: { sum: string; kelvin: string }) => `1 000 000 / ${p.sum} = ${p.kelvin} K.`,
  },
};
