/** Textos de las preguntas sobre la luz por donde va una inmersión: un balance que se mantiene, la turbidez, el lado y la altura del sol, el fondo. */
import { small } from "../format.js";
import { series } from "./common.js";

const less = (p: { each: { name: string; stops: string }[] }): string =>
  `Frente a la primera: ${series(p.each.map(({ name, stops }) => `${small(name)}, ${stops} menos`))}.`;

export const dive = {
  kept_balance: {
    stem: (p: { from: string; to: string; water: string }) =>
      `En ${p.water} hace el balance de blancos con una tarjeta a ${p.from}. Lo mantiene y filma a ${p.to}, solo con luz del día y bien expuesto. ¿Cómo se ve allí una pizarra blanca?`,
    nightStem: (p: { from: string; to: string; water: string }) =>
      `En una inmersión nocturna en ${p.water}, sus focos de vídeo son su única luz. Hace el balance de blancos con una tarjeta a ${p.from}. Lo mantiene y filma a ${p.to}, desde la misma distancia y bien expuesto. ¿Cómo se ve allí una pizarra blanca?`,
    option: {
      red: [
        "Demasiado roja o rosada",
        "Demasiado roja o rosada, como si la cámara compensara más agua de la que hay",
      ],
      cold: [
        "Demasiado azul o verdosa",
        "Demasiado azul o verdosa, como si la cámara compensara menos agua de la que hay",
      ],
      same: ["Tan blanca como la tarjeta", "Tan blanca como la tarjeta: allí el balance aún vale"],
    },
    raised: (p: { from: string; to: string; fromStops: string; toStops: string }) =>
      `A ${p.from} el balance sube el rojo frente al verde en ${p.fromStops}; a ${p.to} tendrían que ser ${p.toStops}.`,
    amountStem: (p: { from: string; to: string; water: string; fromStops: string; toStops: string }) =>
      `En ${p.water}, el balance de blancos con una tarjeta a ${p.from} sube el rojo frente al verde en ${p.fromStops}. A ${p.to}, uno nuevo lo subiría en ${p.toStops}. Mantiene el anterior y filma a ${p.to} con luz del día. ¿Cómo queda allí el rojo de una pizarra blanca frente al verde?`,
    strong: (p: { stops: string }) => `${p.stops} demasiado fuerte`,
    weak: (p: { stops: string }) => `${p.stops} demasiado débil`,
    difference: (p: { more: string; less: string; stops: string }) =>
      `Los dos balances se diferencian en ${p.more} - ${p.less} = ${p.stops}.`,
    last: {
      up: "Más arriba llega más rojo, pero el balance anterior sigue compensando más agua: el blanco sale rojo.",
      down: "Más abajo llega menos rojo, y el balance anterior lo sube demasiado poco: el blanco sale azul o verde.",
      night:
        "Toda la luz la ponen los focos, y su camino no cambia: el balance vale a cualquier profundidad.",
      little:
        "El blanco tiene que desviarse antes de que haga falta otro balance, y aquí nadie ve que se desvíe: el balance vale.",
    },
  },
  contrast_order: {
    stem: (p: { depth: string }) =>
      `Filma con luz del día a ${p.depth}. Ordene estas situaciones según el contraste que el agua le deja al motivo, la de más contraste arriba.`,
    entry: (p: { water: string; distance: string }) => `Desde ${p.distance} en ${p.water}`,
    left: (p: { each: { name: string; percent: string }[] }) =>
      `Contraste que queda: ${series(p.each.map(({ name, percent }) => `${small(name)}, el ${percent}`))}.`,
    last: "Cada metro entre la cámara y el motivo se lleva su parte del contraste, y el agua turbia se lleva más: acérquese, con la flotabilidad controlada, antes de echarle la culpa al objetivo.",
  },
  sun_or_depth: {
    stem: (p: { water: string }) =>
      `El sol está a 50° en un cielo despejado sobre ${p.water}. Ordene estas situaciones según la luz que recibe el lado del motivo que filma, la de más luz arriba.`,
    entry: {
      behind_camera: (p: { depth: string }) => `A ${p.depth}, con el sol detrás de usted`,
      beside: (p: { depth: string }) => `A ${p.depth}, con el sol de lado`,
      in_frame: (p: { depth: string }) => `A ${p.depth}, con el sol dentro del encuadre`,
    },
    less,
    last: "En agua clara, girarse hacia el sol cuesta tanta luz como muchos metros de profundidad: mire dónde está el sol antes de subir el ISO.",
  },
  brightest_hour: {
    stem: (p: { water: string; depth: string }) =>
      `Prepara una inmersión a ${p.depth} en ${p.water}. Ordene estas situaciones según la luz que hay sobre el motivo, la de más luz arriba.`,
    deepStem: (p: { water: string }) =>
      `Prepara inmersiones en ${p.water}. Ordene estas situaciones según la luz que hay sobre el motivo, la de más luz arriba.`,
    entry: {
      clear: (p: { sun: string }) => `Cielo despejado, con el sol a ${p.sun}`,
      overcast: (p: { sun: string }) => `Cielo cubierto, con el sol a ${p.sun} detrás de las nubes`,
    },
    deepEntry: {
      clear: (p: { sun: string; depth: string }) =>
        `A ${p.depth} bajo un cielo despejado, con el sol a ${p.sun}`,
      overcast: (p: { sun: string; depth: string }) =>
        `A ${p.depth} bajo un cielo cubierto, con el sol a ${p.sun}`,
    },
    less,
    last: "Un sol bajo recorre mucho camino por el aire y por el agua, y unas nubes densas cuestan unos dos pasos: las horas claras son las de alrededor del mediodía.",
  },
  floor_light: {
    stem: (p: { water: string; depth: string }) =>
      `Un motivo vertical a ${p.depth} en ${p.water} recibe luz del día. Ordene estos fondos según la luz que le añaden, el que más añade arriba.`,
    entry: {
      sand: (p: { height: string }) => `Arena clara, ${p.height} por debajo`,
      coral: (p: { height: string }) => `Un fondo de coral, ${p.height} por debajo`,
      seagrass: (p: { height: string }) => `Una pradera marina, ${p.height} por debajo`,
    },
    added: (p: { each: { name: string; stops: string }[] }) =>
      `El fondo añade: ${series(p.each.map(({ name, stops }) => `${small(name)}, ${stops}`))}.`,
    last: "La arena clara devuelve hacia arriba mucha de la luz, las plantas oscuras casi nada, y el agua se lleva su parte por el camino: filmar a poca altura sobre la arena es como usar un reflector.",
  },
};
