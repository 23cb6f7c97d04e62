/** Textos de las preguntas sobre focos de vídeo, solos y frente a la luz del día. */
import { BY_COLOUR, type FilterColour } from "./colours.js";

export const lamps = {
  mixed_verdict: {
    stem: (p: { scene: string; depth: string; distance: string; lamp: string; daylight: string }) =>
      `${p.scene} A ${p.depth}, dos focos de vídeo de luz blanca de 5600 K iluminan un motivo vertical desde ${p.distance}. En el motivo, un fotómetro mide ${p.daylight} de luz del día y ${p.lamp} de los focos de vídeo. ¿Qué luz decide el color del motivo?`,
    channelStem: (p: { distance: string; red: string; green: string; blue: string }) =>
      `Dos focos de vídeo de luz blanca de 5600 K iluminan desde ${p.distance} un motivo a profundidad. Medidos canal por canal, dan ${p.red} pasos en rojo, ${p.green} en verde y ${p.blue} en azul frente a la luz del día (más: más que la luz del día; menos: menos). ¿Qué luz decide el color del motivo?`,
    option: {
      lamps_lead: "Mandan los focos de vídeo: haga el balance de blancos a su luz",
      daylight_leads: "Manda la luz del día: haga el balance de blancos a esta luz",
      lights_fight: "No manda ninguna: las dos cuentan y se ve que son distintas",
    },
    compare: (p: { red: string; green: string; blue: string }) =>
      `Los focos de vídeo frente a la luz del día en el motivo: ${p.red} pasos en rojo, ${p.green} pasos en verde y ${p.blue} pasos en azul (más significa más de los focos de vídeo).`,
    last: {
      lamps_lead:
        "Los focos de vídeo son al menos ocho veces (3 pasos) más fuertes: la luz del día apenas tiñe el motivo.",
      daylight_leads:
        "La luz del día es al menos ocho veces (3 pasos) más fuerte: los focos de vídeo apenas se notan.",
      lights_fight:
        "Ninguna es mucho más fuerte, y sus colores son distintos: sea cual sea el balance de blancos, una de las dos muestra una dominante.",
    },
  },
  way_out: {
    stem: (p: { scene: string; depth: string; distance: string }) =>
      `${p.scene} A ${p.depth} hace el balance de blancos a la luz del día. Dos focos de vídeo de luz blanca, a ${p.distance} del motivo, lo dejan ahora demasiado rojo frente al resto de la imagen. ¿Qué quita la mayor parte de la diferencia sin apagar los focos?`,
    option: {
      lamp_filter: (p: { kind: FilterColour }) => `Un filtro ${BY_COLOUR[p.kind]} en cada foco`,
      red_on_lamp: ["Filtros rojos en los focos", "Un filtro rojo en cada uno de los dos focos de vídeo"],
      kelvin: ["Un valor Kelvin más bajo en el balance de blancos", "Un valor Kelvin más bajo"],
      red_on_lens: ["Un filtro rojo en el objetivo", "Un filtro rojo delante del objetivo"],
    },
    split: (p: { split: string; left: string; kind: FilterColour; density: string }) =>
      `Un gris a la luz de los focos y otro a la del día se diferencian en ${p.split} (tomamos un error de color de alrededor de 1 como lo mínimo que se ve). Un filtro ${BY_COLOUR[p.kind]} de densidad ${p.density} en los focos lo baja a ${p.left}.`,
    other: (p: { kind: FilterColour; left: string }) =>
      `Un filtro ${BY_COLOUR[p.kind]} igual de denso dejaría ${p.left}.`,
    last: {
      blue: "La luz de los focos tiene que parecerse a la del día a profundidad: en agua oceánica azul es azul, así que su filtro es azul. Lo que actúa sobre toda la imagen deja la diferencia como está.",
      green:
        "La luz de los focos tiene que parecerse a la del día a profundidad: en agua costera es verde, así que su filtro es verde. Lo que actúa sobre toda la imagen deja la diferencia como está.",
    },
  },
  lamp_falloff: {
    stem: (p: { near: string; far: string }) =>
      `Un foco de vídeo ilumina un motivo desde ${p.near}. Lo aleja hasta ${p.far}. ¿Cuánta de su luz pierde el motivo? No cuente lo que quita el agua.`,
    waterStem: (p: { near: string; far: string; perMetre: string; water: string }) =>
      `Un foco de vídeo ilumina un motivo desde ${p.near} en ${p.water}, que quita ${p.perMetre} de luz roja por metro. Lo aleja hasta ${p.far}. ¿Cuánta de su luz roja pierde el motivo?`,
    spread: (p: { ratio: string; stops: string }) =>
      `La luz del haz baja con el cuadrado de la distancia, dos pasos cada vez que se dobla: 2 × log2(${p.ratio}) = ${p.stops}.`,
    water: (p: { more: string; perMetre: string; stops: string }) =>
      `En ${p.more} más de agua pierde ${p.perMetre} por metro: ${p.stops}.`,
    waterTwice: (p: { more: string; perMetre: string; stops: string }) =>
      `Atraviesa ${p.more} más de agua dos veces, hasta el motivo y de vuelta a la cámara, y pierde ${p.perMetre} por metro: ${p.stops}.`,
    rigStem: (p: { near: string; far: string; perMetre: string; water: string }) =>
      `Filma un motivo desde ${p.near}, con los focos de vídeo al lado de la cámara, en ${p.water}, que quita ${p.perMetre} de luz roja por metro. Se aleja hasta ${p.far}, con focos y cámara juntos. ¿Cuánta de la luz roja de los focos pierde la imagen del motivo?`,
    last: (p: { spread: string; water: string; total: string }) =>
      `La distancia y el agua juntas: ${p.spread} + ${p.water}, más o menos ${p.total}.`,
  },
  lamp_path: {
    stem: (p: { depth: string; water: string; perMetre: string; lamp: string; camera: string }) =>
      `En una inmersión nocturna a ${p.depth} en ${p.water}, el agua quita ${p.perMetre} de luz roja por metro. Del foco de vídeo al motivo hay ${p.lamp}; del motivo a la cámara, ${p.camera}. ¿Cuánta luz roja quita el agua del foco a la cámara?`,
    behindStem: (p: {
      depth: string;
      water: string;
      perMetre: string;
      green: string;
      lamp: string;
      camera: string;
    }) =>
      `En una inmersión nocturna a ${p.depth} en ${p.water}, un metro de agua quita ${p.perMetre} de luz roja y ${p.green} de luz verde. Del foco de vídeo al motivo hay ${p.lamp}; del motivo a la cámara, ${p.camera}. ¿Cuánto se ha quedado el rojo por detrás del verde cuando la luz llega a la cámara?`,
    more: (p: { perMetre: string; green: string; more: string }) =>
      `Un metro quita más de rojo que de verde: ${p.perMetre} - ${p.green} = ${p.more}.`,
    path: (p: { lamp: string; camera: string; total: string }) =>
      `Va del foco de vídeo al motivo y sigue hasta la cámara: ${p.lamp} + ${p.camera} = ${p.total}.`,
    last: (p: { perMetre: string; total: string; stops: string }) =>
      `${p.perMetre} por metro a lo largo de ${p.total}: ${p.stops}.`,
  },
};
