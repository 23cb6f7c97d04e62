const WORDS = ["very easy", "easy", "medium", "difficult", "very difficult"] as const;

/** A difficulty from 0 to 1 as one of the five words of IEEE 1484.12.1 (Learning Object Metadata), element 5.8: a fifth each. */
export const difficultyWord = (difficulty: number): (typeof WORDS)[number] =>
  WORDS[Math.min(WORDS.length - 1, Math.floor(difficulty * WORDS.length))] ?? "medium";
