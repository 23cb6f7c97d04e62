// Patterns that give a translation away, each with the words to use in its place and a sample that it has to catch.

interface Pattern {
  refuses: RegExp;
  say: string;
  /** A text that it has to catch. */
  sample: string;
  /** One that it has to let pass. */
  lets: string;
}

export const patterns: readonly Pattern[] = [
  // Terms: one word for one thing.
  {
    refuses: /(?<![-_])\blamps?\b(?![-_])/i,
    say: "video light (lamp stays in names of fields)",
    sample: "The lamp leads.",
    lets: "The video light of `lamps` leads.",
  },
  {
    refuses: /\blit haze\b|\bhaze that the (lamps|lights|video lights) light\b/i,
    say: "backscatter",
    sample: "Lit haze hides it.",
    lets: "Backscatter hides it; haze veils it.",
  },
  {
    refuses:
      /(?<!white-)\bbalanc(es|ed|ing) (white|on)\b|(?<!\b(white|a|an|one|new|every)[ -])\bbalance (white|on)\b/i,
    say: "set a white balance, white-balance on the card",
    sample: "Balance on the card.",
    lets: "White-balance on the card: leave the white balance on manual.",
  },
  {
    refuses: /\bcasts? (that is |is )?left\b|\bcolour split\b|\bsplit (that|which) (is|one)\b/i,
    say: "colour cast",
    sample: "A cast left of 5.",
    lets: "A slight colour cast stays.",
  },
  {
    refuses: /(?<![\d.])(1|one) stops\b|(?<![\d.])\b(2|3|4|5|two|three) stop\b(?! (loss|less|step))/i,
    say: "1 stop, 2 stops",
    sample: "It costs 1 stops.",
    lets: "It costs 1 stop, at most 0.8 stop, then 2 stops.",
  },
  {
    refuses: /\bneutral densit(y|ies)\b(?! filter)/i,
    say: "neutral-density filter, ND",
    sample: "Carry a neutral density.",
    lets: "Carry a neutral-density filter.",
  },
  {
    refuses: /\bby (itself|themselves)\b/i,
    say: "by default, on its own, or name what does it",
    sample: "It is 0.6 by itself.",
    lets: "It is 0.6 by default.",
  },
  {
    refuses: /\b0 to \d+ (entries|characters)\b/i,
    say: "up to 64 entries",
    sample: "0 to 64 entries",
    lets: "up to 64 entries, 2 to 64 entries",
  },
  {
    refuses: /\bwhoever\b|(^|[.;:!?]\s+)Who\b[^?.]*(\.|$)/im,
    say: "anyone who, if you",
    sample: "Who asks gets an answer.",
    lets: "Who asks? Anyone who reads it.",
  },
  {
    refuses: /\bworking level\b|\blevel working\b/i,
    say: "intermediate",
    sample: "It is of the working level.",
    lets: "It is of the intermediate level.",
  },
  {
    refuses: /\bkelvin settings?\b/i,
    say: "Kelvin preset",
    sample: "No kelvin setting fits.",
    lets: "No Kelvin preset fits.",
  },
  // Turns of phrase.
  {
    refuses: /\b(what|which|that|all) (is|are) not known\b/i,
    say: "the uncertainties",
    sample: "It lists what is not known exactly.",
    lets: "It lists the uncertainties.",
  },
  {
    refuses:
      /\b(takes?|taking|took) (about |some |up to )?(\{[^}]*stops[^}]*\}|[\d.⅓⅔]+ stops?\b|(a|one|two|three|half a) stops?\b)/i,
    say: "costs 2 stops",
    sample: "The filter takes 2 stops.",
    lets: "The filter costs 2 stops.",
  },
  {
    refuses: /\basks? for EV\b/,
    say: "meters EV 8",
    sample: "The scene asks for EV 8.",
    lets: "The scene meters EV 8.",
  },
  {
    refuses: /\bas (much|many) as\b[^.]*\bas (much|many) as\b|\bfrom as (much|many|far) as\b/i,
    say: "two sentences",
    sample: "It takes as much as it gives, as many as there are and as much as before.",
    lets: "It gives as much as it takes.",
  },
  {
    refuses: /\bthe rest of the light\b/i,
    say: "green and blue",
    sample: "It cuts the rest of the light.",
    lets: "It cuts green and blue.",
  },
  {
    refuses: /\b(is|are|was|were|be|been|being) (told|said)\b/i,
    say: "who says it",
    sample: "The learner is told nothing.",
    lets: "The answer tells the learner nothing.",
  },
  {
    refuses: /\b(would|could|can|will|to) better (the|it|them|its|colours?)\b/i,
    say: "improves",
    sample: "No filter would better the colours.",
    lets: "No filter improves the colours.",
  },
  {
    refuses: /\ba (fall|rise|gain|loss|change) of [^;:]{0,40} to be worth\b/i,
    say: "a verb",
    sample: "It takes a fall of 0.5 to be worth mounting.",
    lets: "It is worth mounting if the error falls by 0.5.",
  },
  {
    refuses: /\banew\b/i,
    say: "again",
    sample: "Set it anew.",
    lets: "Set it again.",
  },
  {
    refuses: /\bdearest\b|\bin its place the\b/i,
    say: "most expensive, heaviest",
    sample: "The dearest scene.",
    lets: "The slowest scene.",
  },
  {
    refuses: /\bhas not the\b|\bhave not the\b|\bknows? not\b/i,
    say: "does not have",
    sample: "The text has not the form.",
    lets: "The text does not have the form.",
  },
  {
    refuses:
      /(?<!\bthere )is no (date|number|value|text|token|day|name|filter|advice|calculation|card|list|place|proxy)\b/i,
    say: "is not a",
    sample: "It is no number.",
    lets: "It is not a number. There is no number.",
  },
  {
    refuses: /\bsays? nothing (here|where|without)\b/i,
    say: "has no effect",
    sample: "It says nothing here.",
    lets: "It has no effect here.",
  },
  {
    refuses: /\b(which|that|what) it (has|have) of its own\b|\bfurther ones?\b/i,
    say: "its own, more",
    sample: "Further ones may come.",
    lets: "More may come.",
  },
  // Safety: nothing that reads as a licence for depth.
  {
    refuses: /\bdepth does not (matter|count)\b/i,
    say: "what does not change with depth",
    sample: "Depth does not matter.",
    lets: "The colour stays the same at any depth.",
  },
  {
    refuses: /\b(film|go|dive|stay) no deeper than\b|\byou (can|may) go (down|deeper)\b/i,
    say: "what the light does there",
    sample: "Film no deeper than 12 m.",
    lets: "Red is gone below 12 m.",
  },
];

/** A line of text and what in it a pattern refuses. */
export interface Fault {
  found: string;
  text: string;
  say: string;
}

/** All that a text has of what the patterns refuse. Code between backticks is not read. */
export function faultsOf(text: string): Fault[] {
  const read = text.replace(/`[^`]*`/g, "` `");
  return patterns.flatMap(({ refuses, say }) => {
    const found = refuses.exec(read)?.[0];
    return found === undefined ? [] : [{ found: found.trim(), text: read.trim(), say }];
  });
}
