import type { MountingSteps } from "@sunfathom/planner";
import type { Texts } from "../problems/texts.js";

/** Ce qu’il faut faire pour monter un filtre. Pratique courante. */
export const mountingProcedure: Texts<MountingSteps, string> = {
  cut_practice: () =>
    "Entraînez-vous à la découpe sur une gélatine d’éclairage bon marché, jusqu’à ce qu’elle entre sans forcer ni laisser de jour.",
  cut_sheet: () =>
    "Découpez la gélatine entre deux feuilles de papier propre avec une lame bien affûtée, et ne la tenez que par les bords.",
  slide_in: () =>
    "Dépoussiérez-la à la soufflette et glissez-la bien à plat dans le logement derrière l’objectif.",
  tape_on: () =>
    "Dépoussiérez-la à la soufflette et collez-la bien à plat sur l’ouverture. Aucun adhésif sur les contacts électriques ni sur les portées de la monture.",
  refocus: () =>
    "Refaites la mise au point avec la gélatine en place, et vérifiez la netteté des premières images en profondeur.",
  sheet_set: () =>
    "Rangez la gélatine avec le filtre en verre de même densité, pour que le jeu reste complet.",
  sheet_renew: () =>
    "Examinez la gélatine avant chaque voyage, et remplacez-la si elle est rayée, passée ou gondolée.",
  tape_renew: () =>
    "Posez un adhésif neuf à chaque voyage, et enlevez les restes de l’ancien : la chaleur et l’humidité le décollent.",
  dry_land_only: () => "Ne la changez qu’à terre, à l’abri du sable et des embruns.",
  chain_assemble: () =>
    "Vissez les bagues à la main, dans l’ordre indiqué, sans forcer ; un soupçon de graisse silicone les empêche de gripper.",
  wall_test: () =>
    "Photographiez un mur blanc au plus grand-angle et au diaphragme le plus fermé, et regardez les coins.",
  clear_of_port: () =>
    "Glissez doucement l’objectif dans le caisson, et vérifiez que rien ne touche le hublot avant de fermer.",
  no_bubbles: () =>
    "Une fois dans l’eau, retirez le filtre ou inclinez-le pour chasser l’air entre lui et la vitre.",
  no_grit: () =>
    "Rincez le filtre et la vitre avant de poser le filtre : un grain de sable entre eux raye les deux.",
  tether: () => "Attachez le filtre avec une cordelette pour ne pas le perdre.",
  change_practised: () => "Entraînez-vous au changement en surface, avec vos gants si vous en portez.",
  rinse: () => "Après la plongée, rincez le filtre et son support à l’eau douce, et séchez-les séparément.",
};
