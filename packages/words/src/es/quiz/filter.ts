/** Textos de las preguntas sobre filtros. */
import { small } from "../format.js";
import { BY_COLOUR, type FilterColour } from "./colours.js";
import { series } from "./common.js";

/** La cámara de la escena del planificador. */
const CAMERA =
  "Su cámara va de ISO 200 a ISO 3200 y de f/2,8 a f/16, y el tiempo de exposición se queda en 1/50 s.";
const WORTH =
  "Enseña las imágenes tal como las guarda la cámara. ¿Qué filtro merece la pena montar en el objetivo, si es que alguno la merece?";

export const filter = {
  filter_for_water: {
    stem: (p: { scene: string; depth: string }) =>
      `${p.scene} Filma a ${p.depth} solo con luz del día y hace el balance de blancos con una tarjeta. ${CAMERA} ${WORTH}`,
    pictureStem: (p: { depth: string; sun: string }) =>
      `Filma a ${p.depth}. La figura muestra cuánta luz del día queda allí. El sol está ${p.sun} sobre el horizonte y el cielo está despejado. La luz del día es su única luz, y hace el balance de blancos con una tarjeta. ${CAMERA} ${WORTH}`,
    option: {
      none: "Sin ningún filtro",
      red: "Un filtro rojo",
      magenta: "Un filtro magenta",
    },
    losses: (p: { depth: string; red: string; green: string; blue: string }) =>
      `De camino a ${p.depth}, el agua le quita ${p.red} al rojo, ${p.green} al verde y ${p.blue} al azul.`,
    errors: (p: { without: string; name: string; error: string }) =>
      `El error de color medio de una carta es ${p.without} sin filtro y ${p.error} con ${p.name} (tomamos alrededor de 1 como lo mínimo que se ve).`,
    named: (p: { kind: FilterColour; density: string }) =>
      `el mejor filtro ${BY_COLOUR[p.kind]}, de densidad ${p.density}`,
    read: (p: { nm: number; percent: string; red: string }) =>
      `Leído en la curva: lo que más queda está a ${p.nm} nm, el ${p.percent}, y a 600 nm queda el ${p.red}.`,
    /** De un filtro donde hay tan poca agua encima que ninguno merece la pena. */
    notNeeded: "Tan poca agua le ha quitado poco al rojo: casi no hay nada que un filtro tenga que frenar.",
    last: {
      none: "Un filtro merece la pena si baja el error de color medio en 1 como mínimo. Aquí no lo logra ninguno.",
      red: "El rojo es débil frente al verde y frente al azul, y sobra luz: un filtro rojo frena los dos.",
      magenta: "El verde es fuerte frente al rojo y al azul, y sobra luz: un filtro magenta frena el verde.",
    },
  },
  density_to_stops: {
    stem: (p: { density: string }) => `Un filtro ND tiene una densidad de ${p.density}. ¿Cuánta luz cuesta?`,
    colourStem: (p: { density: string }) =>
      `Un filtro magenta tiene una densidad de ${p.density} para la luz verde. ¿Cuánta luz verde cuesta?`,
    stackStem: (p: { first: string; second: string }) =>
      `Dos filtros ND, de densidad ${p.first} y ${p.second}, van uno detrás del otro. ¿Cuánta luz cuestan juntos?`,
    sum: (p: { first: string; second: string; sum: string }) =>
      `Las densidades se suman: ${p.first} + ${p.second} = ${p.sum}.`,
    whole: (p: { density: string; stops: string }) =>
      `Una densidad de 0,3 es un paso: ${p.density} / 0,3 = ${p.stops}.`,
    last: (p: { density: string; stops: string }) =>
      `Una densidad de 1 cuesta 3,32 pasos: ${p.density} × 3,32 = ${p.stops}.`,
  },
  densities_stack: {
    densityStem: (p: { first: string; second: string }) =>
      `Dos filtros ND, de densidad ${p.first} y ${p.second}, van uno detrás del otro. ¿Qué densidad tienen juntos?`,
    percentStem: (p: { first: string; second: string }) =>
      `Dos filtros ND, de densidad ${p.first} y ${p.second}, van uno detrás del otro. ¿Cuánta de la luz pasa por los dos?`,
    sharesStem: (p: { first: string; second: string }) =>
      `Un filtro ND deja pasar el ${p.first} de la luz, y otro el ${p.second}. Los pone uno detrás del otro. ¿Qué densidad tienen juntos?`,
    shares: (p: { first: string; second: string; both: string }) =>
      `Las partes se multiplican: el ${p.first} del ${p.second} es el ${p.both}.`,
    toDensity: (p: { both: string; density: string }) =>
      `La densidad del ${p.both} es -log10(${p.both}) = ${p.density}.`,
    option: (p: { density: string }) => `Densidad ${p.density}`,
    sum: (p: { first: string; second: string; sum: string }) =>
      `Las densidades se suman: ${p.first} + ${p.second} = ${p.sum}.`,
    percent: (p: { density: string; percent: string }) =>
      `Una densidad de ${p.density} deja pasar 1 / 10^${p.density} = ${p.percent}.`,
  },
  density_match: {
    stopsStem: "Relacione cada densidad de un filtro ND con la luz que cuesta.",
    factorStem:
      "Relacione cada densidad con su factor de filtro: el número por el que se multiplica el tiempo de exposición, con el ISO y el diafragma como estaban.",
    shareStem: "Relacione cada densidad de un filtro ND con la parte de la luz que deja pasar.",
    density: (p: { density: string }) => `Densidad ${p.density}`,
    factor: (p: { factor: number }) => `Factor ${p.factor} (ND${p.factor})`,
    share: (p: { of: number }) => `1/${p.of} de la luz`,
    rule: {
      stops: "Una densidad de 0,3 cuesta un paso, y cada 0,3 más cuesta otro.",
      factor: "Una densidad de 0,3 es un factor de 2, y cada 0,3 más dobla el factor.",
      share:
        "Una densidad de 0,3 deja pasar la mitad de la luz, y cada 0,3 más la vuelve a reducir a la mitad.",
    },
    last: (p: { pairs: { left: string; right: string }[] }) =>
      `${series(p.pairs.map(({ left, right }) => `${left}: ${small(right)}`))}.`,
  },
  density_to_even_out: {
    stem: (p: { water: string; depth: string; red: string; green: string }) =>
      `A ${p.depth} en ${p.water}, el canal rojo ha perdido ${p.red} y el canal verde ${p.green}. Un filtro tiene que bajar el verde al nivel del rojo sin costar nada de rojo. ¿Qué densidad debe tener para la luz verde?`,
    difference: (p: { red: string; green: string; difference: string }) =>
      `El verde tiene más luz que el rojo: ${p.red} - ${p.green} = ${p.difference}.`,
    last: (p: { difference: string; density: string }) =>
      `Una densidad de 1 cuesta 3,32 pasos: ${p.difference} / 3,32 = ${p.density}.`,
    leftStem: (p: {
      water: string;
      depth: string;
      red: string;
      green: string;
      greenDensity: string;
      redDensity: string;
    }) =>
      `A ${p.depth} en ${p.water}, el canal rojo ha perdido ${p.red} y el canal verde ${p.green}. Su filtro magenta tiene una densidad de ${p.greenDensity} para la luz verde y de ${p.redDensity} para la luz roja. ¿Cuánto le lleva todavía el verde al rojo detrás del filtro?`,
    costs: (p: { green: string; red: string; stops: string }) =>
      `El filtro le quita al verde una densidad de ${p.green} - ${p.red} más que al rojo, y una densidad de 1 cuesta 3,32 pasos: ${p.stops}.`,
    left: (p: { difference: string; costs: string; left: string }) =>
      `Lo que queda: ${p.difference} - ${p.costs}, más o menos ${p.left}.`,
  },
};
