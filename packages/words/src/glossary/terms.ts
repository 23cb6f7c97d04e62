import type { Language } from "@sunfathom/contract";

/**
 * One word for one thing, in each language: what a diver with a camera calls it there. Stems where a word is inflected. A text
 * uses its language's own wherever the English one has the term, which test/languages.test.ts holds. Common practice, no
 * published source.
 */
export const terms: Readonly<Record<string, Readonly<Record<Language, RegExp>>>> = {
  video_light: { en: /\bvideo lights?\b/i, de: /(Video)?[Ll]ampe|\bLicht\b|\bsie\b|ihr(em)? Licht/ },
  white_balance: { en: /\bwhite[ -]balance\b/i, de: /Weißabgleich|Abgleich/ },
  backscatter: { en: /\bbackscatter\b/i, de: /Backscatter/ },
  stop: { en: /[\d⅓⅔] stops?\b/, de: /Blendenstufe/ },
  neutral_density: { en: /\bND\b/, de: /ND-Filter/ },
  colour_cast: { en: /\bcast\b/i, de: /Farbstich|herausnehmen|\beinen (leicht|deutlich|stark)en übrig/ },
  colour_error: { en: /\bcolour error\b/i, de: /Farbfehler/ },
  grey_card: { en: /\bgrey card\b/i, de: /Graukarte|Grau- oder Weißkarte/ },
  white_card: { en: /\bwhite card\b/i, de: /Weißkarte/ },
  housing: { en: /\bhousing\b/i, de: /[Gg]ehäuse/ },
  dome: { en: /\bdome\b/i, de: /[Dd]ome/ },
  step_ring: { en: /\bstep rings?\b/i, de: /Step-Ring/ },
  entrance_pupil: { en: /\bentrance pupil\b/i, de: /Eintrittspupille/ },
  exposure_compensation: { en: /\bexposure compensation\b/i, de: /Belichtungskorrektur/ },
  exposure_time: { en: /\bexposure time\b/i, de: /Belichtungszeit/ },
  red_channel: { en: /\bred channel\b/i, de: /Rotkanal/ },
  secchi_disc: { en: /\bSecchi disc\b/i, de: /Secchi-Scheibe/ },
  visibility: { en: /\bvisibility\b/i, de: /Sichtweite/ },
  buddy: { en: /\bbuddy\b/i, de: /Buddy/ },
  safety_stop: { en: /\bsafety stop\b/i, de: /Sicherheitsstopp/ },
  colour_temperature: { en: /\bcolour temperature\b/i, de: /Farbtemperatur/ },
};
