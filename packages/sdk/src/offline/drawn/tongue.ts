import type { PictureTexts, ProblemTexts } from "@sunfathom/words";

/** What one language has to say on pictures, and where one cannot be drawn as it was asked for. */
export interface DrawnTongue {
  pictures: PictureTexts;
  problems: ProblemTexts;
}
