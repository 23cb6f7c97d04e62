// A course page: the Quillbarrow Sea School draws a paper, shows it, and has the answers marked.
import { Sunfathom, type SunfathomOptions } from "@sunfathom/sdk";

export async function lesson(options: SunfathomOptions): Promise<string[]> {
  const client = new Sunfathom(options);
  const paper = await client.quiz.drawItems({ level: "beginner", count: 8 });
  const page = paper.items.map(({ stem }, index) => `${index + 1}. ${stem}`);

  // What a student who leaves all blank gets: nothing, and no solution to copy.
  const marks = await client.quiz.markAnswers({ token: paper.token, responses: [] });
  return [...page, `${marks.score} of ${marks.max_score}`, ...paper.cautions.map(({ text }) => text)];
}
