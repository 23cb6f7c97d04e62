/** Spanish entries and options as the other routes read them: by words written down here by hand, not by the catalogue. */
import type { Item } from "../item/item.js";

const WORDS: readonly [RegExp, string][] = [
  [/tipo Jerlov/g, "Jerlov type"],
  [/\bpasos\b/g, "stops"],
  [/\bpaso\b/g, "stop"],
  [/el diafragma/g, "the aperture"],
  [/el tiempo de exposición/g, "the exposure time"],
  [/, y (?=cambiar|montar)/g, ", and "],
  [/filtro ND de densidad/g, "ND filter of density"],
  [/Un filtro azul en cada foco/g, "A blue filter on each light"],
  [/Un filtro verde en cada foco/g, "A green filter on each light"],
  [/Un filtro rojo en cada/g, "A red filter on each"],
  [/^Azul, de densidad/g, "Blue of density"],
  [/^Verde, de densidad/g, "Green of density"],
  [/cubierto/g, "overcast"],
  [/sol detrás de usted/g, "sun behind you"],
  [/sol de lado/g, "sun beside you"],
  [/sol dentro del encuadre/g, "sun in the frame"],
  [/arena/gi, "sand"],
  [/pizarra blanca/g, "white slate"],
  [/costras rosadas/g, "pink crusts"],
  [/algas pardas y verdes/g, "brown and green seaweed"],
  [/pradera marina/g, "seagrass"],
  // Parts of a mount, from the water inwards.
  [/abatible/g, "swing-in"],
  [/El puerto de la carcasa/g, "The port of the housing"],
  [/enroscado delante/g, "screwed onto the front"],
  [/anillo adaptador/g, "step ring"],
  [/Las lentes del objetivo/g, "The glass"],
  [/lámina de filtro detrás/g, "sheet behind"],
  [/El sensor/g, "The sensor"],
  // A dive, in its order.
  [/^Montar el filtro/g, "Mount the filter"],
  [/^Cerrar la carcasa y comprobar su junta/g, "Close the housing"],
  [/^En la superficie/g, "At the surface"],
  [/^A la profundidad a la que filma/g, "At filming depth"],
  [/^Más abajo/g, "Deeper"],
  [/^Después de la inmersión/g, "After the dive"],
  [/sacar el filtro/g, "take the filter out"],
  // Faults and what cures them.
  [/El color cambia/g, "The colour changes"],
  [/pez brillante/g, "bright fish"],
  [/llenas de ruido/g, "full of noise"],
  [/estabilizadas/g, "stabilised"],
  [/pierde nitidez de vez en cuando/g, "soft now and then"],
  [/bordes claros y oscuros/g, "rims"],
  [/^Balance de blancos$/g, "White balance"],
  [/^Exposición$/g, "Exposure"],
  [/^Tiempo de exposición máximo$/g, "Longest"],
  [/^Enfoque$/g, "Focus"],
  [/^Realce de nitidez$/g, "Sharpening"],
  [/Manchas oscuras/g, "dark spots"],
  [/Manchas redondas/g, "round patches"],
  [/Esquinas oscuras/g, "dark corners"],
  [/Un lado/g, "one side"],
  [/Nada de rojo/g, "no red"],
  [/imagen pálida/g, "pale image"],
  [/Polvo/g, "dust"],
  [/Burbujas/g, "bubbles"],
  [/Un anillo o un filtro/g, "ring or filter"],
  [/no está plana/g, "does not lie flat"],
  [/no se volvió a bajar/g, "not swung back"],
  [/da en el puerto/g, "falls on the port"],
];

const readBack = (text: string): string =>
  WORDS.reduce((read, [spanish, english]) => read.replace(spanish, english), text)
    .replaceAll("\u00a0", " ")
    .replace(/(\d),(?=\d)/g, "$1.");

const each = <Entry extends { text: string }>(entries: readonly Entry[]): Entry[] =>
  entries.map((entry) => ({ ...entry, text: readBack(entry.text) }));

export function readBackFromSpanish(item: Item): Item {
  switch (item.interaction) {
    case "single_choice":
    case "multiple_choice":
      return { ...item, options: each(item.options) };
    case "ordering":
      return { ...item, entries: each(item.entries) };
    case "matching":
      return { ...item, left: each(item.left), right: each(item.right) };
    case "numeric":
      return item;
  }
}
