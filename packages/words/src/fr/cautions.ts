import type { CautionCode } from "@sunfathom/planner";

/** Précautions communes à plusieurs réponses. */
export const cautions: Readonly<Record<CautionCode, string>> = {
  not_a_dive_planner:
    "Ces conseils portent sur la lumière et la couleur ; ce n’est pas une planification de plongée. Pour la profondeur, la durée, le gaz et la remontée, suivez votre formation, votre moniteur et les règles locales.",
  ascent_first:
    "Votre remontée et votre palier de sécurité passent avant tout. Les profondeurs données pour la remontée, vous les traversez de toute façon : ne modifiez jamais votre remontée pour l’une d’elles.",
  overhead_by_training:
    "Ne plongez de nuit, dans une grotte, dans une épave ou sous la glace qu’avec la formation, le guide et les lampes de secours que cela exige. Un phare vidéo n’est pas une lampe de secours.",
  hover_to_balance:
    "Ne faites la balance des blancs que bien stabilisé, sans rien toucher. Renoncez-y plutôt que de négliger votre binôme, votre profondeur ou votre gaz.",
  closer_under_control:
    "N’approchez que si vous maîtrisez votre flottabilité : ne touchez à rien et laissez de l’espace aux animaux.",
  lamps_in_water_only:
    "L’eau refroidit les phares vidéo de plongée : ne les allumez que dans l’eau. À l’air, ils surchauffent, peuvent vous brûler et faire fondre un filtre en plastique.",
  lamps_not_into_eyes:
    "Ne regardez jamais dans un phare vidéo et ne le braquez jamais sur les yeux d’un plongeur ou d’un animal.",
  lamps_stay_on_rig:
    "Laissez les phares vidéo et leurs accus sur le caisson même si vous ne vous en servez pas : les enlever change son équilibre. Après toute modification, essayez l’ensemble dans l’eau avant de compter dessus.",
  batteries_by_maker:
    "Suivez les notices des fabricants pour les accus et les chargeurs. Jamais de charge sans surveillance, jamais d’accu endommagé ou qui a pris l’eau.",
  filter_on_dry_land:
    "Ne changez un filtre dans le caisson ou derrière l’objectif qu’à terre et au sec ; n’ouvrez jamais un caisson au bord de l’eau.",
  filter_flip_practised:
    "Ne changez de filtre sous l’eau que bien stabilisé, sans rien toucher. Entraînez-vous d’abord en surface : en profondeur, ne pas avoir trop à faire à la fois compte plus que l’image.",
};
