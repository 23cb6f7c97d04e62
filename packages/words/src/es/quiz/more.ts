/** Más textos de preguntas: la luz al bajar, los focos en agua turbia, filtros y correcciones, baterías. */
import { capital, small } from "../format.js";
import { BY_COLOUR, type FilterColour } from "./colours.js";
import { series } from "./common.js";

export const more = {
  balance_lasts: {
    stem: (p: { water: string }) =>
      `Con luz del día, baja en ${p.water}. Ordene estos tramos según lo que cambia en ellos el color de la luz del día (el rojo frente al verde), el de mayor cambio arriba.`,
    entry: (p: { from: string; to: string }) => `De ${p.from} a ${p.to}`,
    changes: (p: { changes: { part: string; stops: string }[] }) =>
      `Cambio del rojo frente al verde: ${series(p.changes.map(({ part, stops }) => `${small(part)}, ${stops}`))}.`,
    last: "Del rojo que queda, un metro cerca de la superficie se lleva más que uno más abajo: haga arriba el balance de blancos más a menudo.",
  },
  balance_target: {
    stem: (p: { water: string; depth: string }) =>
      `Está a ${p.depth} en ${p.water} sin tarjeta. Hace el balance de blancos con una de estas cosas. Ordénelas según lo cerca del blanco que sale después una pizarra blanca, la mejor arriba.`,
    entry: {
      white: "Una pizarra blanca",
      sand: "Arena clara",
      coral: "Coral",
      crustose_coralline_algae: "Roca bajo costras rosadas de algas",
      macroalgae: "Un fondo de algas pardas y verdes",
      seagrass: "Una pradera marina",
    },
    off: (p: { each: { name: string; stops: string }[] }) =>
      `Entre el canal más fuerte y el más débil se apartan del blanco: ${series(p.each.map(({ name, stops }) => `${small(name)}, ${stops}`))}.`,
    last: "Un balance de blancos deja neutro aquello con lo que se hace. Todo lo que tiene color propio, también su mano, pone el color contrario sobre la imagen.",
  },
  backscatter_order: {
    stem: "Dos focos de vídeo al lado de la cámara apuntan al motivo. Ordene estas situaciones según el backscatter que vela el motivo, la de menos arriba.",
    entry: (p: { water: string; distance: string }) => `A ${p.distance} del motivo en ${p.water}`,
    haze: (p: { each: { name: string; percent: string }[] }) =>
      `Backscatter frente a un motivo gris: ${series(p.each.map(({ name, percent }) => `${small(name)}: ${percent}`))}.`,
    last: "A la mitad de distancia hay mucho menos de la mitad de backscatter, y el agua clara tiene poco que dispersar: acérquese, con la flotabilidad controlada, antes de subir la potencia de los focos.",
  },
  lamp_filter_water: {
    stem: "La luz de sus focos de vídeo tiene que casar con la luz del día de alrededor. Relacione cada agua con el filtro que va en los focos.",
    entry: (p: { water: string; depth: string }) => `${capital(p.water)}, a ${p.depth}`,
    filter: (p: { kind: FilterColour; density: string }) =>
      `${capital(BY_COLOUR[p.kind])}, de densidad ${p.density}`,
    last: "Un filtro en los focos quita lo que la luz del día ha perdido allí: cuanto más azul el agua, más azul el filtro; y cuanto más hondo, más denso.",
  },
  filter_two_dives: {
    stem: (p: { first: string; second: string; rows: string[] }) =>
      `Puede llevar un solo filtro para dos inmersiones enteras: ${p.first}, y después ${p.second}. Los errores de color medios de una carta, tal como los da la cámara, son: ${p.rows.join("; ")}. ¿Qué error medio de las dos inmersiones da la mejor elección?`,
    weighedStem: (p: {
      first: string;
      second: string;
      rows: string[];
      firstMinutes: number;
      secondMinutes: number;
    }) =>
      `Puede llevar un solo filtro para dos inmersiones enteras: ${p.first}, donde filma ${p.firstMinutes} minutos, y después ${p.second}, donde filma ${p.secondMinutes} minutos. Los errores de color medios de una carta, tal como los da la cámara, son: ${p.rows.join("; ")}. ¿Qué error medio de todos los minutos da la mejor elección?`,
    dive: (p: { depth: string; water: string }) => `a ${p.depth} en ${p.water}`,
    row: {
      none: (p: { first: string; second: string }) => `sin filtro, ${p.first} y ${p.second}`,
      red: (p: { first: string; second: string }) => `filtro rojo, ${p.first} y ${p.second}`,
      magenta: (p: { first: string; second: string }) => `filtro magenta, ${p.first} y ${p.second}`,
    },
    means: (p: { none: string; red: string; magenta: string }) =>
      `Las medias son ${p.none} sin filtro, ${p.red} con el rojo y ${p.magenta} con el magenta.`,
    last: (p: { best: string }) =>
      `Un filtro tiene que servir para las dos inmersiones, así que cuenta la media más baja: ${p.best}.`,
  },
  grade_saves: {
    stem: "¿Cuáles de estas cosas puede arreglar después una corrección de color?",
    option: {
      cast: ["Una dominante leve en toda la imagen", "Una dominante leve"],
      dark: ["Una toma medio paso demasiado oscura", "Medio paso de menos"],
      contrast: [
        "Una imagen de poco contraste",
        "Poco contraste en agua clara, con todos los tonos registrados",
      ],
      clipped: ["Arena blanca que se quemó", "Arena que se quemó hasta el blanco en los tres canales"],
      red: (p: { depth: string; water: string }) => [
        `El rojo de un motivo a ${p.depth} en ${p.water}`,
        `El rojo de un motivo gris que se filmó a ${p.depth} en ${p.water}, con luz del día y sin filtro`,
      ],
      tint: [
        "El rojo perdido en el ruido, con un tinte",
        "El rojo que se perdió en el ruido, con un tinte rojo sobre toda la imagen",
      ],
      bits: [
        "El rojo perdido en el ruido, en 10 bits",
        "El rojo que se perdió en el ruido, al convertir la toma a 10 bits",
      ],
      split: [
        "Dos luces de distinto color",
        "Un motivo demasiado rojo a la luz de los focos, con el agua de detrás bien",
      ],
      smear: ["Movimiento borroso por un tiempo largo", "Movimiento borroso"],
    },
    last: "Una corrección cambia lo que se registró, en toda la imagen a la vez. Lo que se quemó, se perdió en el ruido, salió movido o se iluminó con dos colores se queda así.",
  },
  safe_batteries: {
    stem: "¿Cuáles de estas cosas son buena práctica con las baterías de los focos de vídeo?",
    option: {
      maker: "Cargarlas como dice el fabricante, con su cargador",
      watched: "Estar cerca mientras se cargan",
      damaged: "Retirar del uso una abollada o hinchada, al aire libre y lejos de todo lo que arda",
      flooded: "No cargar nunca una que se inundó",
      dry_seals: "Secar el compartimento y mirar su junta antes de cerrarlo",
      cool: "Dejar que una batería caliente se enfríe antes de cargarla",
      flight:
        "Llevar las de repuesto en el equipaje de mano con los contactos cubiertos, como piden las aerolíneas",
      rest: "Desconectar los focos cuando están cargados",
      overnight: "Cargarlas de noche en el camarote mientras duermen todos",
      rinse_inside: "Enjuagar con agua dulce el compartimento abierto de la batería",
      any_charger: "Usar cualquier cargador en el que encajen",
      sun: "Dejarlas al sol en cubierta para que no se enfríen",
      try_flooded: "Secar al sol una que se inundó y cargarla otra vez para ver si aguanta",
      loose: "Guardar las de repuesto sueltas en una bolsa con monedas y llaves",
      hot_charge:
        "Cargarlas enseguida, aún calientes de la inmersión, para ganar tiempo antes de la siguiente",
    },
    last: "Las baterías de los focos guardan mucha energía: cargador e instrucciones del fabricante, nunca sin vigilancia, y nunca una dañada o que se inundó.",
  },
};
