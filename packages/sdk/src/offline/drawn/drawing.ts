import {
  attenuation as calculation,
  checkLook,
  lightSceneWith,
  mountedOn,
  type Unanswered,
  unsaid,
} from "@sunfathom/answers";
import { pictures } from "@sunfathom/pictures";
import { attenuation as texts } from "@sunfathom/words/en";
import type { DrawnTongue } from "./tongue.js";

// Draws pictures here. Packed apart from all other entries, with its own copy of what it shares with them: what pages without pictures
// load is cut into no more files for its sake.

/** What a picture comes to: itself, why its scene has none, or what is wrong with how it was to be drawn. */
type Drawn =
  | { status: "ok"; svg: string }
  | Unanswered
  | { status: "problem"; problem: Extract<ReturnType<typeof checkLook>, { problem: unknown }>["problem"] };

/** All that pictures take is a scene of light, whichever calculation it is for. */
const scenes = calculation.in(texts, unsaid, lightSceneWith(mountedOn));

/** English, and the others when they are asked for. */
const tongues: Readonly<Record<string, () => Promise<{ tongue: DrawnTongue }>>> = {
  en: () => import("./en.js"),
  de: () => import("./de.js"),
  es: () => import("./es.js"),
  fr: () => import("./fr.js"),
};

/** Loads what a language has to say. @throws where it cannot be loaded */
export async function tongueOf(language: string): Promise<DrawnTongue> {
  const load = tongues[language];
  if (load === undefined)
    throw new TypeError(`language is ${language}, but must be one of ${Object.keys(tongues).join(", ")}.`);
  return (await load()).tongue;
}

/** @param path of the picture at a service @param asked how it is to be drawn, as it came from the caller */
export function draw(path: string, scene: unknown, asked: object, tongue: DrawnTongue): Drawn {
  const picture = pictures.find(({ name }) => path === `/v1/pictures/${name}`);
  if (picture === undefined) throw new Error(`There is no picture ${path}.`);
  const checked = checkLook(asked, tongue.problems);
  if ("problem" in checked) return { status: "problem", problem: checked.problem };
  const { width_px = 800, theme = "light" } = checked.look;
  const ready = scenes.prepare(scene);
  if (ready.status === "refused") return ready;
  try {
    // The calculation has checked it, and brought it into the planner's form.
    const own = ready.scene as Parameters<typeof picture.drawing>[0];
    return {
      status: "ok",
      svg: picture.drawing(own)({ width_px, theme, units: ready.units }, tongue.pictures),
    };
  } catch (error) {
    return ready.refuse(error);
  }
}
