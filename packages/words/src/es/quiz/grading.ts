/** Textos de las preguntas sobre lo que aún puede hacer una corrección de color. */
export const grading = {
  red_in_post: {
    stem: (p: { scene: string; depth: string; snr: string }) =>
      `${p.scene} Ha filmado un motivo gris a ${p.depth} solo con luz del día, sin filtro y en 8 bits. Al revisar la toma se ve que su luz roja (por encima de 600 nm) es ${p.snr} veces el ruido. ¿Qué puede hacer por su rojo la corrección de color?`,
    filterStem: (p: { scene: string; depth: string; density: string; snr: string }) =>
      `${p.scene} Sin filtro, la luz roja (por encima de 600 nm) de un motivo gris a ${p.depth} era ${p.snr} veces el ruido. Ahora lo ha filmado con un filtro rojo de densidad ${p.density}, solo con luz del día y tan bien expuesto como podía la cámara. ¿Qué puede hacer por su rojo la corrección de color?`,
    /** Varias maneras de decir cada cosa, para que la longitud no diga nada. */
    option: {
      restore: [
        "Subirlo hasta que el blanco sea blanco",
        "Subir el rojo hasta que el blanco sea blanco: se registró bastante luz roja para que quede limpio",
      ],
      part: [
        "Recuperar algo, con ruido",
        "Recuperar una parte del rojo, con ruido visible: se registró algo de luz roja",
      ],
      none: [
        "Nada: no hay rojo que subir",
        "Nada: no se registró casi luz roja, así que no hay rojo que subir",
      ],
    },
    signal: (p: { snr: string; low: string; high: string }) =>
      `En un gris del 18 %, la luz roja por encima de 600 nm es ${p.snr} veces el ruido (entre ${p.low} y ${p.high} veces). Por encima de 5 veces el ruido se puede subir y queda limpia; por debajo de 1 está perdida.`,
    last: {
      restore: "La luz roja está muy por encima del ruido, así que la corrección puede subirla.",
      part: "La luz roja está algo por encima del ruido: subida hasta el blanco, vuelve con ruido.",
      none: "La luz roja se pierde en el ruido, y lo que no se registró no se puede recuperar.",
    },
  },
};
