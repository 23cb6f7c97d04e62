import type { CuttingTemplateTexts } from "../cutting-template-texts.js";
import { cautions } from "./cautions.js";
import { shown, unit } from "./format.js";
import { mountingCautions } from "./mounting-cautions.js";

const length = (mm: number): string => shown(mm, Number.isInteger(mm) ? 0 : 1);
const size = ([width, height]: readonly [number, number]): string =>
  `${length(width)} × ${unit(length(height), "mm")}`;

export const cuttingTemplate: CuttingTemplateTexts = {
  title: "Gabarit pour une gélatine derrière l’objectif",
  sizes: ({ sheet, opening }) => `Gélatine ${size(sheet)}, ouverture ${size(opening)}.`,
  steps: [
    "Imprimez à 100 %, sans ajuster à la page.",
    "Mesurez la barre. Si elle ne fait pas 50 mm, imprimez à nouveau.",
    "Mesurez vous-même l’ouverture avant de couper.",
    "Entraînez-vous d’abord sur une gélatine bon marché, jusqu’à ce qu’elle entre sans forcer ni laisser de jour.",
  ],
  bar: "50 mm",
  cut: "coupez ici",
  opening: "l’ouverture : pas d’adhésif à l’intérieur",
  tape: "l’adhésif va ici",
  contacts: "contacts : ni gélatine ni adhésif",
  cautions: [
    mountingCautions.mount_makers_instructions,
    mountingCautions.mount_sensor_dust,
    cautions.filter_on_dry_land,
  ],
  description: ({ sheet, opening }) =>
    `Dessiné en vraie grandeur : le contour d’une gélatine de ${size(sheet)}, l’ouverture de ${size(opening)} à l’intérieur, où va l’adhésif, où sont les contacts, et une barre de 50 mm à mesurer.`,
};
