/** Textos de las preguntas sobre la cámara: tiempo, valores de código, automatismos y la luz que mide. */
import { small } from "../format.js";
import { list, series } from "./common.js";

const pairsOf = (pairs: { left: string; right: string }[]): string =>
  series(pairs.map(({ left, right }) => `${left}: ${small(right)}`));

export const camera = {
  shutter_angle: {
    stem: (p: { fps: number; angle: string }) =>
      `Filma a ${p.fps} fotogramas por segundo con un ángulo de obturación de ${p.angle}. El tiempo de exposición es 1/x s. ¿Cuánto vale x?`,
    changeStem: (p: { fps: number; angle: string; toFps: number; toAngle: string }) =>
      `Filma a ${p.fps} fotogramas por segundo con un ángulo de obturación de ${p.angle} y cambia a ${p.toFps} fotogramas por segundo con ${p.toAngle}. ¿Cuánta luz pierde cada fotograma?`,
    time: (p: { fps: number; angle: string; x: string }) =>
      `Un fotograma dura 1/${p.fps} s, y el obturador está abierto ${p.angle} de 360°: 1/${p.x} s.`,
    last: (p: { x: string }) => `x = ${p.x}.`,
    change: (p: { from: string; to: string; stops: string }) =>
      `De 1/${p.from} s a 1/${p.to} s: log2(${p.to} / ${p.from}) = ${p.stops}.`,
  },
  histogram_code: {
    stem: (p: { percent: string }) =>
      `Su cámara graba en 8 bits (de 0 a 255) con la curva de vídeo habitual (Rec. 709: señal = 1,099 × luz^0,45 - 0,099, ambas de 0 a 1), y una superficie que lo refleja todo llegaría justo a 255. ¿En qué valor del histograma queda una superficie con una reflectancia del ${p.percent}?`,
    underStem: (p: { percent: string; stops: string }) =>
      `Su cámara graba en 8 bits (de 0 a 255) con la curva de vídeo habitual (Rec. 709: señal = 1,099 × luz^0,45 - 0,099, ambas de 0 a 1), expuesta ${p.stops} por debajo de donde una superficie que lo refleja todo llegaría justo a 255. ¿En qué valor del histograma queda una superficie con una reflectancia del ${p.percent}?`,
    light: (p: { share: string }) => `Su luz es el ${p.share} de la luz que llega a 255.`,
    last: (p: { share: string; value: string }) =>
      `La curva es 1,099 × luz^0,45 - 0,099: con el ${p.share} de la luz, eso da ${p.value} de 255.`,
  },
  codes_per_stop: {
    logStem: (p: { bits: number; stops: number }) =>
      `Una curva logarítmica reparte ${p.bits} bits por igual entre ${p.stops} pasos. ¿Cuántos valores de código tiene cada paso?`,
    linearStem: (p: { bits: number; stop: number }) =>
      `Una grabación lineal tiene ${p.bits} bits. El paso más claro es el primero. ¿Cuántos valores de código tiene el paso número ${p.stop}?`,
    values: (p: { bits: number; values: number }) =>
      `${p.bits} bits son 2^${p.bits} = ${p.values} valores de código.`,
    log: (p: { values: number; stops: number; each: string }) =>
      `Repartidos por igual: ${p.values} / ${p.stops} = ${p.each}.`,
    linear: (p: { stop: number; each: string }) =>
      `El paso más claro se lleva la mitad de los valores, y cada paso siguiente, la mitad de lo que queda: ${p.each} para el paso ${p.stop}.`,
  },
  card_reading: {
    stem: (p: { water: string; depth: string; red: string; green: string }) =>
      `A ${p.depth} en ${p.water}, una tarjeta blanca filmada en valores de código lineales y sin balance de blancos da ${p.red} en rojo y ${p.green} en verde. ¿Cuánto tiene que subir el balance de blancos el rojo frente al verde?`,
    videoStem: (p: { water: string; depth: string; red: string; green: string }) =>
      `A ${p.depth} en ${p.water}, una tarjeta blanca filmada en 8 bits con la curva de vídeo habitual y sin balance de blancos da ${p.red} en rojo y ${p.green} en verde. La curva (Rec. 709) leída al revés: luz = ((código / 255 + 0,099) / 1,099)^2,22. ¿Cuántos pasos de luz va el rojo por detrás del verde?`,
    light: (p: { red: string; green: string }) =>
      `De vuelta a la luz: ${p.red} en rojo y ${p.green} en verde, de la luz que llega a 255.`,
    ratio: (p: { red: string; green: string; ratio: string }) =>
      `El rojo tiene que crecer en la proporción entre los dos: ${p.green} / ${p.red} = ${p.ratio}.`,
    last: (p: { ratio: string; stops: string }) => `En pasos: log2(${p.ratio}) = ${p.stops}.`,
  },
  sun_turn: {
    stem: (p: { depth: string; water: string; loss: string; iso: string; side: string }) =>
      `A ${p.depth} en ${p.water} tiene el sol detrás y el motivo está bien expuesto a ${p.iso}. Lo rodea nadando hasta tener el sol ${p.side}, y el lado que filma recibe ${p.loss} menos de luz. El diafragma y el tiempo no cambian. ¿Qué ISO expone bien el motivo, en un dial por tercios de paso?`,
    deeperStem: (p: {
      depth: string;
      water: string;
      loss: string;
      iso: string;
      side: string;
      to: string;
      more: string;
    }) =>
      `A ${p.depth} en ${p.water} tiene el sol detrás y el motivo está bien expuesto a ${p.iso}. Se gira hacia otro motivo, con el sol ${p.side}: el lado que ve de él recibe ${p.loss} menos de luz. Después lo sigue hasta ${p.to}, lo que cuesta ${p.more} más. El diafragma y el tiempo no cambian. ¿Qué ISO lo expone bien allí, en un dial por tercios de paso?`,
    side: { beside: "de lado", in_frame: "dentro del encuadre" },
    sum: (p: { turn: string; more: string; loss: string }) =>
      `Los pasos se suman: ${p.turn} + ${p.more} = ${p.loss}.`,
    loss: (p: { iso: number; loss: string; stops: string; result: string }) =>
      `Con ${p.loss} menos de luz hace falta otro tanto más de ISO: ${p.iso} × 2^${p.stops} ≈ ${p.result}.`,
    last: (p: { result: string; others: string[] }) =>
      p.others.length === 0
        ? `El valor más cercano del dial es ISO ${p.result}.`
        : `El valor más cercano del dial es ISO ${p.result}; su vecino ISO ${list(p.others)} también es correcto.`,
  },
  loss_budget: {
    stem: (p: { parts: string[]; water: string; depth: string }) =>
      `De camino al sensor, la luz del día a ${p.depth} en ${p.water} pierde ${list(p.parts)}. ¿Cuánto es eso en total?`,
    factorStem: (p: { parts: string[]; water: string; depth: string }) =>
      `De camino al sensor, la luz del día a ${p.depth} en ${p.water} pierde ${list(p.parts)}. ¿Por qué factor queda dividida al final?`,
    part: {
      depth: (p: { stops: string }) => `${p.stops} en el agua de encima`,
      distance: (p: { stops: string }) => `${p.stops} entre el motivo y la cámara`,
      port: (p: { stops: string }) => `${p.stops} en el puerto`,
      filter: (p: { stops: string }) => `${p.stops} en un filtro`,
    },
    sum: (p: { parts: string; sum: string }) => `Los pasos se suman: ${p.parts} = ${p.sum}.`,
    last: (p: { sum: string; factor: string }) => `Cada paso es un factor de 2: 2^${p.sum} = ${p.factor}.`,
  },
  auto_settings: {
    stem: "Una cámara de acción está en automático. Relacione cada defecto de las tomas con el ajuste que hay que pasar a manual para evitarlo.",
    pairs: {
      colour_jumps: ["El color cambia de una toma a otra", "Balance de blancos"],
      brightness_pumps: ["La imagen se oscurece al pasar un pez brillante", "Exposición"],
      noise: ["Las escenas oscuras salen llenas de ruido", "Valor ISO máximo"],
      smear: ["Las imágenes estabilizadas salen movidas con poca luz", "Tiempo de exposición máximo"],
      hunting: ["La imagen pierde nitidez de vez en cuando", "Enfoque"],
      edges: ["Los contornos tienen bordes claros y oscuros", "Realce de nitidez"],
    },
    last: (p: { pairs: { left: string; right: string }[] }) =>
      `Una cámara en automático cambia sus ajustes cuando cambia la imagen. ${pairsOf(p.pairs)}.`,
  },
  mount_faults: {
    stem: "Revisa sus tomas. Relacione cada defecto con su causa.",
    pairs: {
      dust: [
        "Manchas oscuras, pequeñas y nítidas, en el mismo sitio en todas las tomas",
        "Polvo en el sensor o en una lámina detrás del objetivo",
      ],
      bubbles: [
        "Manchas redondas y difusas que cambian de sitio de una toma a otra",
        "Burbujas entre el puerto y el filtro",
      ],
      corners: [
        "Esquinas oscuras que desaparecen al acercar con el zoom",
        "Un anillo o un filtro demasiado pequeño o demasiado adelantado",
      ],
      tape: ["Un lado desenfocado", "Una lámina que no está plana detrás del objetivo"],
      lost: [
        "Nada de rojo desde la mitad de la inmersión",
        "Un filtro que no se volvió a bajar delante del objetivo",
      ],
      reflection: [
        "Una imagen pálida del objetivo sobre agua oscura",
        "Luz que da en el puerto desde detrás del equipo",
      ],
    },
    last: (p: { pairs: { left: string; right: string }[] }) => `${pairsOf(p.pairs)}.`,
  },
};
