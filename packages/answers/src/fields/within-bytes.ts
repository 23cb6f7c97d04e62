/** What a brief answer stays below, in bytes of its JSON. */
const limit = 700;

interface Brief {
  headline: string;
  answer: object;
  caution: string;
  caution_codes: readonly string[];
  model_version: string;
}

/**
 * The same in less than 700 bytes: without the headline's last sentences, then without the longest fields of the answer, and in the end
 * without the last words of the sentence that is left. Its cautions stay whole.
 */
export function withinBytes(whole: Brief): Brief {
  let brief = whole;
  const sentences = whole.headline.split(/(?<=[.!?]) /);
  while (tooLong(brief) && sentences.length > 1) {
    sentences.pop();
    brief = { ...brief, headline: `${sentences.join(" ")} …` };
  }
  while (tooLong(brief) && Object.keys(brief.answer).length > 0)
    brief = { ...brief, answer: withoutLongest(brief.answer) };
  const letters = [...(sentences[0] ?? "")];
  while (tooLong(brief) && letters.length > 0) {
    letters.pop();
    brief = { ...brief, headline: `${lastWordOff(letters)} …`.trimStart() };
  }
  return brief;
}

const tooLong = (brief: Brief): boolean => bytesOf(brief) >= limit;

/** In UTF-8 (RFC 3629, section 3), as an answer is sent. */
function bytesOf(value: unknown): number {
  let bytes = 0;
  for (const letter of JSON.stringify(value)) {
    const point = letter.codePointAt(0) ?? 0;
    bytes += point < 0x80 ? 1 : point < 0x800 ? 2 : point < 0x10000 ? 3 : 4;
  }
  return bytes;
}

function withoutLongest(answer: object): object {
  const fields = Object.entries(answer);
  const longest = fields.reduce((best, field) => (bytesOf(field) > bytesOf(best) ? field : best));
  return Object.fromEntries(fields.filter((field) => field !== longest));
}

/** Without a word that was cut in two, where there is one before it. */
function lastWordOff(letters: readonly string[]): string {
  const text = letters.join("");
  const end = text.lastIndexOf(" ");
  return end > 0 ? text.slice(0, end) : text;
}
