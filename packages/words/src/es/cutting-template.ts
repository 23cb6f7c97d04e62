import type { CuttingTemplateTexts } from "../cutting-template-texts.js";
import { cautions } from "./cautions.js";
import { shown, unit } from "./format.js";
import { mountingCautions } from "./mounting-cautions.js";

const length = (mm: number): string => shown(mm, Number.isInteger(mm) ? 0 : 1);
const size = ([width, height]: readonly [number, number]): string =>
  `${length(width)} × ${unit(length(height), "mm")}`;

export const cuttingTemplate: CuttingTemplateTexts = {
  title: "Plantilla para una lámina detrás del objetivo",
  sizes: ({ sheet, opening }) => `Lámina ${size(sheet)}, abertura ${size(opening)}.`,
  steps: [
    "Imprima al 100 %, sin ajustar a la página.",
    "Mida la barra. Si no mide 50 mm, imprima otra vez.",
    "Mida usted la abertura antes de cortar.",
    "Practique primero con una lámina barata, hasta que ajuste sin forzar y sin huecos.",
  ],
  bar: "50 mm",
  cut: "corte aquí",
  opening: "la abertura: sin cinta por dentro",
  tape: "aquí va la cinta",
  contacts: "contactos: ni lámina ni cinta",
  cautions: [
    mountingCautions.mount_makers_instructions,
    mountingCautions.mount_sensor_dust,
    cautions.filter_on_dry_land,
  ],
  description: ({ sheet, opening }) =>
    `Dibujado a tamaño real: el contorno de una lámina de ${size(sheet)}, la abertura de ${size(opening)} dentro de él, dónde va la cinta, dónde están los contactos y una barra de 50 mm para medir.`,
};
