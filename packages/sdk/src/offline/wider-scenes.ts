import { lightSceneWith, unsaid } from "@sunfathom/answers";
import type { Sources } from "./part.js";

/** What answers in the words of one language, for plain scenes or for those of a wider kind. */
interface In<Texts> {
  in: (texts: Texts, refuse: typeof unsaid, wider: ReturnType<typeof lightSceneWith>) => Sources["source"];
}

/** What answers scenes that say more than the plain ones: loaded where one comes. */
export const widened =
  <Texts>(calculation: In<Texts>, texts: Texts, textsOf: (words: object) => Texts) =>
  async (): Promise<Sources> => {
    const { mountedOn } = await import("./wider/scene.js");
    const scenes = lightSceneWith(mountedOn);
    return {
      source: calculation.in(texts, unsaid, scenes),
      saidIn: (words) => calculation.in(textsOf(words), unsaid, scenes),
    };
  };
