import type { FilterMountingReasons, PupilBasis, StepRing } from "@sunfathom/planner";
import type { Texts } from "../../problems/texts.js";
import { distance, near, percent, plural, shown, unit } from "../format.js";
import { mountingHolders } from "../mounting-holders.js";

const mm = (value: number, decimals = 1): string => unit(shown(value, decimals), "mm");

/** Ce qui décide de la place du filtre. */
export const filterMountingReasons: Texts<FilterMountingReasons, string> = {
  mount_asked_does_not_fit: (p) =>
    `Ce que vous demandez, ${mountingHolders[p.asked]}, ne va pas sur cet appareil. Prenez plutôt ${mountingHolders[p.instead]}.`,
  mount_nothing_fits: () =>
    "En l’état, aucun support ne convient ; les raisons ci-dessous disent ce qu’il faudrait changer.",
  mount_no_room_for_two: () =>
    "Le filtre ND reste à terre : avec le filtre de couleur, il n’y a plus la place, ou les coins s’assombrissent.",

  mount_on_lens: () =>
    "Le filtre se visse sur l’objectif, dans le caisson : à l’air, à l’abri des chocs, mais fixe pour toute la plongée.",
  mount_outside_fixed: () =>
    "Le filtre est dans l’eau, devant la vitre plane, et reste en place pendant la plongée.",
  mount_outside_changed: () =>
    "Le filtre est dans l’eau, devant la vitre plane : en profondeur, vous pouvez l’escamoter, ou le retirer et le remettre.",
  mount_over_window: () =>
    "Un cadre prévu pour cette caméra tient le filtre devant sa vitre, tout près de l’objectif.",
  mount_behind_lens: () =>
    "Une gélatine derrière l’objectif ne prend pas de place à l’avant : elle va avec les lentilles frontales bombées et tous les dômes, et n’a pas de bord qui assombrisse les coins. Elle reste en place pendant toute la plongée.",

  mount_window_is_port: () =>
    "La vitre de cette caméra est son hublot : il n’y a pas d’objectif accessible derrière.",
  mount_front_bulges: () =>
    "La lentille frontale d’un fisheye est bombée et ne laisse pas de place à un filetage : le filtre se met derrière l’objectif.",
  mount_lens_without_thread: () => "L’objectif n’a pas de filetage pour filtre : rien ne peut s’y visser.",
  mount_field_too_wide: (p) =>
    `L’objectif voit ${shown(p.field_deg)} degrés : aucun filtre plan placé devant n’est assez large. Le filtre se met derrière l’objectif.`,
  mount_hits_dome: (p) =>
    `Avec la pupille d’entrée au centre du dôme, le bord du filtre empiéterait de ${mm(-p.clearance_mm, 0)} sur le dôme : il n’y a pas de place pour ce filtre derrière ce dôme.`,
  mount_near_dome: (p) =>
    `Il ne reste que ${mm(p.clearance_mm, 0)} environ entre le bord et le dôme : essayez doucement à la main avant de fermer le caisson.`,
  mount_not_before_dome: () =>
    "Un filtre plan ne tient pas sur un dôme, et il serait énorme pour en couvrir le champ : avec un dôme, le filtre se met à l’intérieur.",
  mount_port_without_thread: () =>
    "On ne connaît pas de filetage à l’extérieur de ce hublot : vous ne pouvez pas y visser de filtre.",
  mount_flip_seat_unknown: () =>
    "On ne connaît pas de filetage à l’extérieur de ce hublot. Assurez-vous que le porte-filtre basculant se serre dessus, ou indiquez `port_thread_mm` ou `port_outer_diameter_mm`.",
  mount_clip_seat_unknown: () =>
    "Sans le diamètre extérieur du hublot, impossible de dire si un clip y tient. Mesurez-le et indiquez `port_outer_diameter_mm`.",
  mount_frame_for_housing: () =>
    "Le cadre doit être prévu pour le caisson de cette caméra : celui de la caméra nue n’y va pas. Essayez-le avant le voyage.",
  mount_holder_too_small: (p) =>
    `Le support fait ${mm(p.inner_mm)} à l’intérieur et le hublot ${mm(p.port_mm)} à l’extérieur : il ne passe pas.`,
  mount_holder_too_large: (p) =>
    `Le support fait ${mm(p.inner_mm)} à l’intérieur et le hublot ${mm(p.port_mm)} à l’extérieur : il n’y tient pas.`,
  mount_holder_loose: (p) =>
    `Le support fait ${mm(p.inner_mm - p.port_mm)} de plus que le hublot : garnissez-le de caoutchouc jusqu’à ce qu’il tienne, et attachez-le.`,
  mount_holder_to_ask_for: (p) =>
    `Demandez un support pour un hublot de ${mm(p.port_mm)} de diamètre extérieur.`,
  mount_dome_room_unknown: () =>
    "Sans le rayon du dôme, on ne sait pas quelle place il reste entre le bord et le dôme. Essayez doucement à la main, ou indiquez `dome_radius_mm`.",
  mount_not_an_action_camera: () =>
    "Les cadres sont faits pour les caméras d’action et leurs caissons, pas pour le hublot d’un appareil plus gros.",
  mount_lens_stays_on: () =>
    "L’objectif de cet appareil ne se démonte pas : rien ne peut se mettre derrière.",
  mount_fixed_for_dive: () =>
    "À cet endroit, le filtre ne se change pas en profondeur : choisissez-en un qui serve à toutes les profondeurs prévues.",
  mount_other_change: (p) =>
    `À cet endroit, vous changez de filtre ${CHANGES[p.allowed]}, pas comme vous le demandiez.`,

  mount_hits_port: (p) =>
    `Zoom au plus long, le bord du filtre entrerait de ${mm(-p.clearance_mm)} dans le hublot : il n’a pas sa place sur cet objectif.`,
  mount_near_port: (p) =>
    `Zoom au plus long, il ne reste que ${mm(p.clearance_mm)} devant le hublot : essayez doucement à la main avant de fermer le caisson.`,
  mount_zoom_room_unknown: (p) =>
    `L’objectif s’allonge de ${mm(p.travel_mm)} en zoomant. Le filtre touche-t-il alors le hublot ? Seul \`lens_port_gap_mm\` ou un essai à la main peut le dire.`,
  mount_wet_lens_in_the_way: (p) =>
    `${WET_LENSES[p.wet_lens]} se met sur le hublot, là où irait ce support. Emportez l’un ou l’autre, pas les deux.`,
  mount_wet_lens_stacked: (p) =>
    p.wet_lens === "wide"
      ? `Entre le hublot et le complément grand-angle, le filtre éloigne celui-ci du hublot de ${mm(p.thickness_mm)}, ce qui assombrit les coins et lui coûte du piqué. Essayez en photographiant un mur, dans l’eau.`
      : `Vissez d’abord le filtre sur le hublot, puis la bonnette macro sur le filtre. Il avance la bonnette de ${mm(p.thickness_mm)} : vérifiez que les filetages supportent le poids des deux.`,
  wet_lens_not_on_dome: () =>
    "Un complément optique va sur un hublot plan : la réponse suppose que le dôme sert sans lui.",
  ghosts_inside: (p) =>
    `Le filtre et l’objectif se renvoient les lumières vives, affaiblies d’au moins ${shown(p.in_air_stops)} IL : une image fantôme du soleil ou d’un phare dans le champ peut apparaître. Un filtre traité antireflet l’atténue.`,
  ghosts_outside: (p) =>
    `Avec de l’eau entre le filtre et la vitre, les images fantômes des lumières vives sont plus faibles de ${shown(p.in_water_stops)} IL et ne se voient pas ; avec de l’air, de ${shown(p.in_air_stops)} IL seulement.`,
  filter_weighs: (p) =>
    `Un filtre de cette taille en ${MATERIALS[p.material]} pèse environ ${shown(p.weight_g)} g dans l’eau, sans son support.`,

  rings_not_needed: (p) =>
    `Le filtre et sa monture ont tous deux un filetage de ${mm(p.thread_mm)} : il ne faut pas de bague.`,
  rings_filter_thread_assumed: (p) =>
    `Vous n’avez pas indiqué le filetage du filtre : il est supposé de ${mm(p.thread_mm)}, comme celui de la monture.`,
  rings_close: (p) =>
    `${plural(p.rings.length, { one: "Votre bague d’adaptation mène", other: "Vos bagues d’adaptation mènent" })} au filtre : ${p.rings.map(ring).join(", puis ")}. ${plural(p.rings.length, { one: "Elle l’avance", other: "Ensemble, elles l’avancent" })} de ${mm(p.thickness_mm)}. Aucune autre suite de vos bagues n’est plus large.`,
  rings_missing: (p) =>
    `Vos bagues d’adaptation ne vont pas de ${shown(p.from_mm, 1)} à ${mm(p.to_mm)}. Procurez-vous une bague qui se visse en ${mm(p.from_mm)} et reçoive ${mm(p.to_mm)}. Les valeurs des coins supposent qu’elle a 3 mm d’épaisseur.`,
  rings_too_thick: (p) =>
    `Vos bagues d’adaptation vont de ${shown(p.from_mm, 1)} à ${mm(p.to_mm)}, mais coupent les coins. Procurez-vous une seule bague fine, qui se visse en ${mm(p.from_mm)} et reçoive ${mm(p.to_mm)}. Les valeurs des coins supposent qu’elle a 3 mm d’épaisseur.`,
  rings_wrong_way: (p) =>
    `La bague ${p.id} relie les mêmes diamètres dans l’autre sens (elle se visse en ${mm(p.from_mm)} et reçoit ${mm(p.to_mm)}) : une bague ne se retourne pas.`,
  rings_narrow: (p) =>
    `La suite de bagues se resserre à ${mm(p.narrowest_mm)}, moins que l’objectif et le filtre, et assombrit les coins. Une seule bague de ${shown(p.from_mm, 1)} à ${mm(p.to_mm)} ferait mieux.`,
  rings_step_down: (p) =>
    `Un filtre de ${mm(p.to_mm)} sur une monture de ${mm(p.from_mm)} demande une bague réductrice (step-down), qui assombrit les coins. Mieux vaut un filtre aussi large que la monture, ou plus large.`,

  corners_clear: (p) =>
    `Le filtre et les bagues laissent ${percent(p.light_percent)} de la lumière dans le coin : la vue est dégagée jusqu’à ${shown(p.clear_half_deg)} degrés de l’axe, et le coin est à ${shown(p.corner_half_deg)}.`,
  corners_slight: (p) =>
    `Le filtre et les bagues laissent ${percent(p.light_percent)} de la lumière tout au coin ; jusqu’à ${shown(p.clear_half_deg)} degrés de l’axe, tout est dégagé. Cela ne se voit presque pas.`,
  corners_dark: (p) =>
    `Le filtre et les bagues assombrissent les coins : il y reste ${percent(p.light_percent)} de la lumière. Tout est dégagé jusqu’à ${shown(p.clear_half_deg)} degrés de l’axe ; le coin est à ${shown(p.corner_half_deg)}.`,
  corners_black: (p) =>
    `Le filtre et les bagues couperont sans doute les coins : la vue n’est dégagée que jusqu’à ${shown(p.clear_half_deg)} degrés de l’axe, et le coin est à ${shown(p.corner_half_deg)}. Il vous faut un diamètre libre de ${mm(p.clear_diameter_needed_mm, 0)}.`,
  corners_close: (p) =>
    `C’est serré : si la pupille d’entrée est plus en arrière que prévu, il ne reste que ${percent(p.least_light_percent)} de la lumière dans le coin. Un diamètre libre de ${mm(p.clear_diameter_safe_mm, 0)} suffit même dans ce cas.`,
  corners_unknown: (p) =>
    `Vous n’avez pas indiqué le diamètre libre du filtre : avec ${mm(p.clear_diameter_needed_mm, 0)} environ, les coins sont dégagés.`,
  corners_test: () =>
    "Les fabricants publient rarement la position de la pupille d’entrée, et elle bouge avec l’angle. Photographiez un mur blanc au plus grand-angle et au diaphragme le plus fermé : vous verrez ce qu’il en est.",
  pupil_distance_assumed: (p) =>
    `La pupille d’entrée est supposée à ${mm(p.distance_mm, 0)} derrière le filtre, à ${percent(p.spread_percent)} près, ${PUPIL_ASSUMED_FROM[p.from]}.`,
  format_assumed: (p) =>
    `La diagonale du capteur est supposée de ${mm(p.diagonal_mm)} : indiquez sensor_diagonal_mm pour être plus sûr des coins.`,

  flat_port_narrows: (p) =>
    `La vitre plane réduit ${shown(p.field_in_air_deg)} degrés dans l’air à ${shown(p.field_in_water_deg)} dans l’eau : tout paraît ${percent(p.enlarged_percent)} plus grand et aux trois quarts de sa distance.`,
  dome_keeps_field: () =>
    "Avec la pupille d’entrée de l’objectif en son centre, le dôme conserve l’angle de champ.",
  dome_brings_near: (p, u) =>
    `Derrière ce dôme, les choses les plus lointaines paraissent à ${near(p.from_vertex_mm, u)} devant le verre, à ${near(p.from_centre_mm, u)} de son centre : l’objectif doit faire la mise au point d’aussi près.`,

  sheet_shifts_focus: (p) =>
    `La gélatine recule l’image de ${mm(p.shift_mm, 3)}. L’autofocus le compense. Si vous faites la mise au point à l’échelle des distances, le flou est de ${mm(p.blur_mm, 4)}, pour ${mm(p.allowed_mm, 3)} d’ordinaire admis.`,
  sheet_all_in_reach: (p, u) =>
    `Vous ne perdez rien à l’infini : derrière ce dôme, rien ne paraît à plus de ${near(p.from_centre_mm, u)}, largement dans ce que l’objectif peut atteindre avec la gélatine.`,
  sheet_infinity_hidden: (p, u) =>
    `Un objectif à butée sur l’infini fait la mise au point jusqu’à ${distance(p.farthest_m, u)} avec la gélatine ; au-delà, le flou reste dans la profondeur de champ.`,
  sheet_infinity_lost: (p, u) =>
    `Un objectif à butée sur l’infini ne fait la mise au point que jusqu’à ${distance(p.farthest_m, u)} avec la gélatine, et au-delà le flou est de ${mm(p.blur_mm, 3)} : fermez le diaphragme, prenez une gélatine plus fine, ou assurez-vous que l’objectif tourne au-delà de l’infini.`,
  sheet_focus_unknown: () =>
    "Sans le rayon du dôme, impossible de dire si l’objectif fait encore la mise au point avec la gélatine : indiquez `dome_radius_mm`.",
  sheet_measure_opening: () =>
    "Mesurez l’ouverture derrière l’objectif, ou la fente du support, pour connaître la taille à découper.",
  sheet_cut: (p) => `Découpez la gélatine à ${shown(p.width_mm, 1)} sur ${mm(p.height_mm)}.`,
};

const WET_LENSES = { wide: "Le complément grand-angle", close_up: "La bonnette macro" } as const;

const MATERIALS = { glass: "verre", resin: "résine" } as const;

const PUPIL_ASSUMED_FROM: Readonly<Record<PupilBasis, string>> = {
  thread: "comme sur les objectifs de ce genre, conçus pour un filtre ordinaire",
  sensor: "d’après la taille de l’image sur le capteur",
  window: "tout près derrière la vitre, comme sur les petites caméras",
};

const CHANGES = {
  flip: "en le basculant sur sa charnière",
  clip_on: "en le retirant et en le clipsant",
} as const;

const ring = ({ id, from_mm, to_mm }: Pick<StepRing, "id" | "from_mm" | "to_mm">): string =>
  `${id} (${size(from_mm)} à ${unit(size(to_mm), "mm")})`;

const size = (value: number): string => shown(value, Number.isInteger(value) ? 0 : 1);
