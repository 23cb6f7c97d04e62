import type { Language } from "@sunfathom/contract";

/**
 * One word for one thing, in each language: what a diver with a camera calls it there. Stems where a word is inflected. A text
 * uses its language's own wherever the English one has the term, which test/languages.test.ts holds. Common practice, no
 * published source.
 */
export const terms: Readonly<Record<string, Readonly<Record<Language, RegExp>>>> = {
  video_light: {
    en: /\bvideo lights?\b/i,
    de: /(Video)?[Ll]ampe|\bLicht\b|\bsie\b|ihr(em)? Licht/,
    fr: /phares?\b|\b(ils|eux|lui)\b|leur lumière/i,
  },
  white_balance: { en: /\bwhite[ -]balance\b/i, de: /Weißabgleich|Abgleich/, fr: /balance/i },
  backscatter: { en: /\bbackscatter\b/i, de: /Backscatter/, fr: /particules/ },
  stop: { en: /[\d⅓⅔] stops?\b/, de: /Blendenstufe/, fr: /\bIL\b/ },
  neutral_density: { en: /\bND\b/, de: /ND-Filter/, fr: /filtre (neutre )?ND/ },
  colour_cast: {
    en: /\bcast\b/i,
    de: /Farbstich|herausnehmen|\beinen (leicht|deutlich|stark)en übrig/,
    fr: /dominante|l’enlève|elle serait/,
  },
  colour_error: { en: /\bcolour error\b/i, de: /Farbfehler/, fr: /erreur de couleur/ },
  grey_card: {
    en: /\bgrey card\b/i,
    de: /Graukarte|Grau- oder Weißkarte/,
    fr: /charte grise|chartes? grise ou blanche/,
  },
  white_card: { en: /\bwhite card\b/i, de: /Weißkarte/, fr: /charte blanche|charte grise ou blanche/ },
  housing: { en: /\bhousing\b/i, de: /[Gg]ehäuse/, fr: /caisson/ },
  dome: { en: /\bdome\b/i, de: /[Dd]ome/, fr: /dôme|\bdome\b/ },
  step_ring: { en: /\bstep rings?\b/i, de: /Step-Ring/, fr: /bagues? d’adaptation/ },
  entrance_pupil: { en: /\bentrance pupil\b/i, de: /Eintrittspupille/, fr: /pupille d’entrée/ },
  exposure_compensation: {
    en: /\bexposure compensation\b/i,
    de: /Belichtungskorrektur/,
    fr: /correction d’exposition/,
  },
  exposure_time: { en: /\bexposure time\b/i, de: /Belichtungszeit/, fr: /temps de pose/ },
  red_channel: { en: /\bred channel\b/i, de: /Rotkanal/, fr: /canal rouge/ },
  secchi_disc: { en: /\bSecchi disc\b/i, de: /Secchi-Scheibe/, fr: /disque de Secchi/ },
  visibility: { en: /\bvisibility\b/i, de: /Sichtweite/, fr: /visibilité/ },
  buddy: { en: /\bbuddy\b/i, de: /Buddy/, fr: /binôme/ },
  safety_stop: { en: /\bsafety stop\b/i, de: /Sicherheitsstopp/, fr: /palier de sécurité/ },
  colour_temperature: { en: /\bcolour temperature\b/i, de: /Farbtemperatur/, fr: /température de couleur/ },
};
