import { checkRequest, member, nearest } from "@sunfathom/answers";
import { pictureDefaults as defaults, type FieldError, type PictureLook } from "@sunfathom/contract";
import type { ProblemTexts } from "@sunfathom/words";
import type { Look } from "../pictures/look.js";
import { type QueryFields, queryFieldsOf, readQuery } from "./query.js";

const fields = queryFieldsOf({ request: "PictureLook", besideLists: [] });

export interface LookAsked {
  /** The query without what says how the picture is drawn. */
  query: string;
  /** Undefined where something is wrong with it. */
  look: Look | undefined;
  errors: readonly FieldError[];
}

/**
 * Reads how a picture is to be drawn from a query that may hold a scene, too.
 * @param ofScene fields of the scene, where the query may hold them
 */
export function readLook(query: string, words: ProblemTexts, ofScene?: QueryFields): LookAsked {
  const pairs = query.split("&");
  const isOwn = (pair: string) => fields.has(nameOf(pair));
  const rest = pairs.filter((pair) => !isOwn(pair)).join("&");
  const { scene: said, errors } = readQuery(pairs.filter(isOwn).join("&"), fields, words.query);
  if (ofScene) errors.push(...misspelt(pairs.map(nameOf), ofScene, words));
  const checked = checkRequest<PictureLook>("PictureLook", { ...said }, words);
  if (errors.length > 0) return { query: rest, look: undefined, errors };
  if ("problem" in checked) return { query: rest, look: undefined, errors: checked.problem.errors ?? [] };
  const { format = defaults.format, width_px = defaults.width_px, theme = defaults.theme } = checked.request;
  return { query: rest, look: { format, width_px, theme }, errors };
}

function nameOf(pair: string): string {
  try {
    return decodeURIComponent(pair.split("=", 1)[0] ?? "");
  } catch {
    return "";
  }
}

/** Names that no scene has and that are meant to say how the picture is drawn: the scene's check knows no such names to offer. */
function misspelt(names: readonly string[], ofScene: QueryFields, words: ProblemTexts): FieldError[] {
  return names.flatMap((name) => {
    if (name === "" || fields.has(name) || ofScene.has(name) || nearest(name, ofScene.keys())) return [];
    const meant = nearest(name, fields.keys());
    return meant === undefined
      ? []
      : [
          {
            pointer: member("", name),
            code: "unknown_field" as const,
            ...words.query.unknown_field({ name, taken: "look_alone" }),
            allowed: [...fields.keys()].join(", "),
            did_you_mean: meant,
          },
        ];
  });
}
