import type { Language } from "@sunfathom/contract";

/**
 * One word for one thing, in each language: what a diver with a camera calls it there. Stems where a word is inflected. A text
 * uses its language's own wherever the English one has the term, which test/languages.test.ts holds. Common practice, no
 * published source.
 *
 * Spanish speaks to the reader as "usted", with words that are understood in Spain and in Latin America alike.
 */
export const terms: Readonly<Record<string, Readonly<Record<Language, RegExp>>>> = {
  video_light: {
    en: /\bvideo lights?\b/i,
    de: /(Video)?[Ll]ampe|\bLicht\b|\bsie\b|ihr(em)? Licht/,
    es: /\b[Ff]ocos?\b/,
    fr: /phares?\b|\b(ils|eux|lui)\b|leur lumière/i,
  },
  white_balance: {
    en: /\bwhite[ -]balance\b/i,
    de: /Weißabgleich|Abgleich/,
    es: /\bbalance\b/i,
    fr: /balance/i,
  },
  backscatter: { en: /\bbackscatter\b/i, de: /Backscatter/, es: /backscatter/i, fr: /particules/ },
  stop: { en: /[\d⅓⅔] stops?\b/, de: /Blendenstufe/, es: /\bpasos?\b/, fr: /\bIL\b/ },
  neutral_density: { en: /\bND\b/, de: /ND-Filter/, es: /filtros? ND/, fr: /filtre (neutre )?ND/ },
  colour_cast: {
    en: /\bcast\b/i,
    de: /Farbstich|herausnehmen|\beinen (leicht|deutlich|stark)en übrig/,
    es: /\bdominante|\bla (quita|elimina)|con una tarjeta quedaría una/,
    fr: /dominante|l’enlève|elle serait/,
  },
  colour_error: { en: /\bcolour error\b/i, de: /Farbfehler/, es: /error de color/, fr: /erreur de couleur/ },
  grey_card: {
    en: /\bgrey card\b/i,
    de: /Graukarte|Grau- oder Weißkarte/,
    es: /tarjeta gris/,
    fr: /charte grise|chartes? grise ou blanche/,
  },
  white_card: {
    en: /\bwhite card\b/i,
    de: /Weißkarte/,
    es: /tarjeta (gris o )?blanca/,
    fr: /charte blanche|charte grise ou blanche/,
  },
  housing: { en: /\bhousing\b/i, de: /[Gg]ehäuse/, es: /carcasa/, fr: /caisson/ },
  dome: { en: /\bdome\b/i, de: /[Dd]ome/, es: /\bdomo\b|\bdome\b/, fr: /dôme|\bdome\b/ },
  step_ring: { en: /\bstep rings?\b/i, de: /Step-Ring/, es: /anillo/, fr: /bagues? d’adaptation/ },
  entrance_pupil: {
    en: /\bentrance pupil\b/i,
    de: /Eintrittspupille/,
    es: /pupila de entrada/,
    fr: /pupille d’entrée/,
  },
  exposure_compensation: {
    en: /\bexposure compensation\b/i,
    de: /Belichtungskorrektur/,
    es: /compensación de exposición/,
    fr: /correction d’exposition/,
  },
  exposure_time: {
    en: /\bexposure time\b/i,
    de: /Belichtungszeit/,
    es: /tiempo de exposición/i,
    fr: /temps de pose/,
  },
  red_channel: { en: /\bred channel\b/i, de: /Rotkanal/, es: /canal rojo/, fr: /canal rouge/ },
  secchi_disc: {
    en: /\bSecchi disc\b/i,
    de: /Secchi-Scheibe/,
    es: /disco de Secchi/,
    fr: /disque de Secchi/,
  },
  visibility: { en: /\bvisibility\b/i, de: /Sichtweite/, es: /visibilidad/, fr: /visibilité/ },
  buddy: { en: /\bbuddy\b/i, de: /Buddy/, es: /compañero/, fr: /binôme/ },
  safety_stop: {
    en: /\bsafety stop\b/i,
    de: /Sicherheitsstopp/,
    es: /parada de seguridad/,
    fr: /palier de sécurité/,
  },
  colour_temperature: {
    en: /\bcolour temperature\b/i,
    de: /Farbtemperatur/,
    es: /temperatura de color/,
    fr: /température de couleur/,
  },
};
