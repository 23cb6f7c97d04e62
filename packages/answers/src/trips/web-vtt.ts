/**
 * Captions as WebVTT (W3C, "WebVTT: The Web Video Text Tracks Format", section 4): a header, notes, and cues in the order of their
 * begin. What callers name themselves cannot leave its line, nor its cue.
 */

/** What is shown from one time to another, s. */
export interface Cue {
  /** Stands over the cue for programs; may be anything. */
  id?: string;
  from_s: number;
  to_s: number;
  lines: readonly string[];
}

const two = (number: number): string => String(number).padStart(2, "0");

/** `hh:mm:ss.ttt`, hours as many as there are (section 4.3.1, "WebVTT timestamp"). */
export function timestamp(seconds: number): string {
  const ms = Math.round(seconds * 1000);
  const whole = Math.floor(ms / 1000);
  const clock = [Math.floor(whole / 3600), Math.floor(whole / 60) % 60, whole % 60].map(two).join(":");
  return `${clock}.${String(ms % 1000).padStart(3, "0")}`;
}

/** One line, never empty: an empty one would end its cue. */
const oneLine = (text: string): string =>
  // biome-ignore lint/suspicious/noControlCharactersInRegex: they are what is taken out.
  text.replace(/[\u0000-\u001f\u007f\u0085\u2028\u2029]+/g, " ").trim() || "-";

/** Plain text between tags and references (section 4.2.2, "WebVTT cue text span"). */
const escaped = (text: string): string =>
  oneLine(text).replaceAll("&", "&amp;").replaceAll("<", "&lt;").replaceAll(">", "&gt;");

/** Where no reference is known, an arrow may not stand (section 4.1). */
const withoutArrow = (text: string): string => oneLine(text).replaceAll("-->", "->");

/** @param cues in any order */
export function webVtt({
  title,
  notes,
  cues,
}: {
  title: string;
  notes: readonly string[];
  cues: readonly Cue[];
}): string {
  const inOrder = [...cues].sort((a, b) => a.from_s - b.from_s || b.to_s - a.to_s);
  const blocks = [
    `WEBVTT ${withoutArrow(title)}`,
    ...notes.map((note) => `NOTE\n${withoutArrow(note)}`),
    ...inOrder.map(({ id, from_s, to_s, lines }) =>
      [
        ...(id === undefined ? [] : [withoutArrow(id)]),
        `${timestamp(from_s)} --> ${timestamp(to_s)}`,
        ...lines.map(escaped),
      ].join("\n"),
    ),
  ];
  return `${blocks.join("\n\n")}\n`;
}
