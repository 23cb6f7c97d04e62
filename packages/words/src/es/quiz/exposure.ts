/** Textos de las preguntas sobre la exposición. */
import { small } from "../format.js";
import { list } from "./common.js";

const dial = (p: { result: string; others: string[] }): string =>
  p.others.length === 0
    ? `El valor más cercano del dial es ISO ${p.result}.`
    : `El valor más cercano del dial es ISO ${p.result}; su vecino ISO ${list(p.others)} también es correcto.`;

export const exposure = {
  pay_with_iso: {
    stem: (p: { iso: string; stops: string }) =>
      `Sin filtro, la imagen está bien expuesta a ${p.iso}. Monta un filtro que cuesta ${p.stops} de luz y deja el diafragma y el tiempo como están. ¿Qué ISO pone, en un dial por tercios de paso?`,
    densityStem: (p: { iso: string; density: string }) =>
      `Sin filtro, la imagen está bien expuesta a ${p.iso}. Monta un filtro ND de densidad ${p.density} y deja el diafragma y el tiempo como están. ¿Qué ISO pone, en un dial por tercios de paso?`,
    factor: (p: { density: string; factor: string }) =>
      `Una densidad de ${p.density} es un factor de filtro de 10^${p.density} = ${p.factor}.`,
    byFactor: (p: { iso: number; factor: string; result: string }) =>
      `El ISO se multiplica por el factor del filtro: ${p.iso} × ${p.factor} ≈ ${p.result}.`,
    doubled: (p: { iso: number; stops: string; result: string }) =>
      `El ISO se dobla con cada paso: ${p.iso} × 2^${p.stops} = ${p.result}.`,
    last: dial,
  },
  pay_with_aperture: {
    stem: (p: { f: string; stops: string }) =>
      `Sin filtro, la imagen está bien expuesta a ${p.f}. Monta un filtro que cuesta ${p.stops} de luz y deja el ISO y el tiempo como están. ¿Qué número f pone?`,
    factorStem: (p: { f: string; factor: number }) =>
      `Sin filtro, la imagen está bien expuesta a ${p.f}. Monta un filtro ND${p.factor}, que deja pasar 1/${p.factor} de la luz, y deja el ISO y el tiempo como están. ¿Qué número f pone?`,
    factor: (p: { factor: number; stops: string }) => `Un factor de ${p.factor} equivale a ${p.stops}.`,
    last: (p: { f: string; stops: string; result: string }) =>
      `Cada paso más de luz divide el número f entre 1,41, la raíz cuadrada de dos. Con ${p.stops} desde ${p.f}: ${p.result}.`,
  },
  exposure_way: {
    brightStem: (p: { depth: string; f: string; iso: string; s: string; stops: string }) =>
      `A ${p.depth} ha puesto ${p.iso}, ${p.f} y ${p.s}, y el fotómetro marca ${p.stops} de luz de más. ¿Cuáles de estas cosas acercan la exposición a la correcta?`,
    darkStem: (p: { depth: string; f: string; iso: string; s: string; stops: string }) =>
      `A ${p.depth} ha puesto ${p.iso}, ${p.f} y ${p.s}, y el fotómetro marca ${p.stops} de luz de menos. ¿Cuáles de estas cosas acercan la exposición a la correcta?`,
    option: {
      aperture: (p: { from: string; to: string }) => `Cambiar el diafragma de ${p.from} a ${p.to}`,
      iso: (p: { from: string; to: string }) =>
        `Cambiar el ISO de ${p.from.replace("ISO ", "")} a ${p.to.replace("ISO ", "")}`,
      shutter: (p: { from: string; to: string }) => `Cambiar el tiempo de exposición de ${p.from} a ${p.to}`,
      neutral: (p: { density: string }) => `Montar un filtro ND de densidad ${p.density}`,
    },
    /** Dos mandos a la vez. */
    two: (p: { first: string; second: string }) => `${p.first}, y ${small(p.second)}`,
    each: "Sume lo que hacen los dos cambios, en pasos: más claro cuenta como más, más oscuro como menos.",
    effect: (p: { stops: string; brighter: boolean }) =>
      `Deja la imagen ${p.stops} más ${p.brighter ? "clara" : "oscura"}.`,
    bright:
      "Sobra luz: sirve todo lo que oscurece la imagen: un número f más alto, un ISO más bajo, un tiempo más corto o un filtro ND.",
    dark: "Falta luz: sirve todo lo que aclara la imagen: un número f más bajo, un ISO más alto o un tiempo más largo.",
  },
  more_red_light: {
    stem: (p: { depth: string; water: string }) =>
      `A ${p.depth} en ${p.water}, el rojo es débil. Cambia una sola cosa y deja todo lo demás como está. ¿Cuáles de estas llevan más luz roja al sensor?`,
    doubleStem: (p: { depth: string; water: string }) =>
      `A ${p.depth} en ${p.water}, el rojo es débil. Cambia una sola cosa y deja todo lo demás como está. ¿Cuáles de estas llevan al sensor al menos el doble de luz roja?`,
    option: {
      apertureTo: (p: { from: string; to: string }) => `Abrir el diafragma de ${p.from} a ${p.to}`,
      shutterTo: (p: { from: string; to: string }) => `Alargar el tiempo de ${p.from} a ${p.to}`,
      aperture: [
        "Abrir un paso el diafragma",
        "Abrir un paso",
        "Abrir un paso el diafragma y no cambiar nada más",
      ],
      shutter: [
        "Doblar el tiempo de exposición",
        "Doblar el tiempo",
        "Doblar el tiempo de exposición y dejar lo demás como está",
      ],
      shallower: (p: { depth: string }) => [`Filmar un motivo así a ${p.depth}`, `Filmar a ${p.depth}`],
      lamp: (p: { distance: string }) => [
        `Encender un foco de vídeo blanco a ${p.distance} del motivo`,
        `Iluminarlo desde ${p.distance}`,
      ],
      iso: ["Doblar el ISO", "Doblar el ISO de la grabación, con el mismo objetivo"],
      filter: ["Montar un filtro rojo", "Montar un filtro rojo delante del objetivo de la cámara"],
      balance: ["Subir el valor Kelvin del balance de blancos", "Poner un valor Kelvin más alto"],
      grade: ["Subir el rojo en la edición", "Subir el rojo en la edición hasta que el blanco salga blanco"],
    },
    feedback: {
      aperture: "Una abertura mayor deja entrar más luz, también roja: el doble con cada paso.",
      shutter: "Se recoge luz durante más tiempo, también roja: el doble con cada paso.",
      shallower: "Con menos agua encima se pierde menos rojo.",
      shallowerBy: (p: { stops: string }) =>
        `Con menos agua encima se pierde menos rojo: aquí, ${p.stops} menos.`,
      lamp: "La luz de un foco de vídeo llega al motivo por un camino corto y lleva rojo consigo.",
    },
    doubleLast: "El doble de luz es un paso: dividir el número f entre 1,41, o doblar el tiempo.",
    last: "Solo más luz en el motivo, una abertura mayor o un tiempo más largo llevan más rojo al sensor.",
  },
};
