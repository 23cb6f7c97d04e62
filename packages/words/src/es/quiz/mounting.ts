/** Textos de las preguntas sobre el montaje de filtros. */
import { list } from "./common.js";

export const mounting = {
  ring: (p: { from: string; to: string }) => `${p.from} en el lado del objetivo, ${p.to} en el del filtro`,
  ring_chain: {
    stem: (p: { lens: string; filter: string }) =>
      `Un objetivo tiene una rosca para filtros de ${p.lens}, y su filtro, una rosca de ${p.filter}. Ordene estos anillos adaptadores tal como se enroscan, el que va en el objetivo arriba.`,
    last: (p: { threads: string[] }) =>
      `Cada anillo se enrosca en el anterior. Del objetivo al filtro, las roscas son ${list(p.threads)}.`,
  },
  ring_direction: {
    stem: (p: { lens: string; filter: string }) =>
      `Un objetivo tiene una rosca para filtros de ${p.lens}, y su filtro, una rosca de ${p.filter}. ¿Qué anillo adaptador los une?`,
    twoStem: (p: { lens: string; filter: string }) =>
      `Un objetivo tiene una rosca para filtros de ${p.lens}, y su filtro, una rosca de ${p.filter}. ¿Qué dos anillos adaptadores los unen, nombrados del lado del objetivo al del filtro y en el orden en que se enroscan?`,
    two: (p: { first: string; second: string }) => `Primero ${p.first}; después ${p.second}`,
    brief: (p: { from: string; to: string }) => `de ${p.from} a ${p.to}`,
    last: (p: { lens: string; filter: string }) =>
      `El lado del objetivo tiene que encajar en el objetivo (${p.lens}), y el del filtro, en el filtro (${p.filter}).`,
    twoLast: (p: { lens: string; between: string; filter: string }) =>
      `Cada anillo tiene que encajar en aquello en lo que se enrosca: ${p.lens} en el objetivo, ${p.between} entre los anillos, ${p.filter} en el filtro.`,
  },
  flat_port_field: {
    stem: (p: { field: string }) =>
      `Un objetivo tiene en el aire un ángulo de campo de ${p.field} de esquina a esquina. ¿Qué ángulo de campo tiene en el agua, detrás de un puerto plano? El índice de refracción del agua de mar es 1,34.`,
    airStem: (p: { field: string }) =>
      `Detrás de un puerto plano quiere un ángulo de campo de ${p.field} de esquina a esquina en el agua. ¿Qué ángulo de campo debe tener el objetivo en el aire? El índice de refracción del agua de mar es 1,34.`,
    airHalf: (p: { half: string; sine: string; product: string }) =>
      `La mitad del ángulo en el agua es ${p.half}. Su seno es ${p.sine}, y ${p.sine} × 1,34 = ${p.product}.`,
    half: (p: { half: string; sine: string; divided: string }) =>
      `La mitad del ángulo en el aire es ${p.half}. Su seno es ${p.sine}, y ${p.sine} / 1,34 = ${p.divided}.`,
    last: (p: { divided: string; half: string; field: string }) =>
      `El ángulo con un seno de ${p.divided} es ${p.half}, y el ángulo de campo es el doble: ${p.field}.`,
  },
  sheet_shift: {
    stem: (p: { thickness: string; index: string; focal: string }) =>
      `Fija una lámina de filtro de ${p.thickness} con un índice de refracción de ${p.index} detrás de un objetivo de ${p.focal}. Lo lejano ya no sale nítido en ∞. ¿A qué distancia gira el anillo de enfoque para que vuelva a salir nítido?`,
    shift: (p: { thickness: string; index: string; shift: string }) =>
      `La lámina retrasa la imagen (1 - 1 / ${p.index}) × ${p.thickness} = ${p.shift}.`,
    last: (p: { focal: string; shift: string; distance: string }) =>
      `El objetivo tiene que adelantarse lo mismo, como lo hace para una distancia de f²/desplazamiento: (${p.focal})² / ${p.shift} = ${p.distance}.`,
  },
  mount_place: {
    fisheyeStem: (p: { dome: string }) =>
      `Una cámara de objetivos intercambiables lleva un ojo de pez detrás de un domo de ${p.dome} de radio. ¿Dónde va el filtro de color?`,
    flatStem: (p: { thread: string }) =>
      `Un objetivo estándar va detrás de un puerto plano con una rosca de ${p.thread} por fuera. Quiere quitar el filtro y volver a ponerlo a profundidad. ¿Dónde va?`,
    domeStem: (p: { thread: string; dome: string }) =>
      `Un objetivo estándar con una rosca para filtros de ${p.thread} va detrás de un domo de ${p.dome} de radio. El objetivo es fijo en la cámara. ¿Dónde va el filtro de color?`,
    wideStem: (p: { dome: string }) =>
      `Una cámara de objetivos intercambiables lleva un gran angular extremo sin rosca para filtros, detrás de un domo de ${p.dome} de radio. ¿Dónde va el filtro de color?`,
    actionStem:
      "Una cámara de acción tiene una ventana plana y va al agua sin carcasa. ¿Dónde va el filtro de color?",
    option: {
      behind_lens: "Como lámina, detrás del objetivo",
      on_lens: "Enroscado en el objetivo, dentro de la carcasa",
      before_port: "En el agua, por delante del puerto o de la ventana",
    },
    last: {
      fisheye:
        "La lente frontal de un ojo de pez es abombada y sin rosca, y ningún filtro plano cubre su campo: va una lámina fina detrás del objetivo.",
      flat: "Solo se puede cambiar lo que está en el agua, y delante de un puerto plano cabe un filtro plano.",
      wide: "Ningún filtro plano asienta sobre un domo, y este objetivo no tiene rosca: va una lámina fina detrás del objetivo.",
      action:
        "A su objetivo no se puede llegar: un marco o un clip sujeta el filtro en el agua, delante de la ventana.",
      dome: "Ningún filtro plano asienta sobre un domo, y detrás de un objetivo fijo no se puede poner nada: queda la rosca del propio objetivo.",
    },
  },
};
