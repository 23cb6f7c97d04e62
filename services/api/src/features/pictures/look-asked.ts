import { checkRequest, member, nearest } from "@sunfathom/answers";
import {
  pictureDefaults as defaults,
  type FieldError,
  maxErrors,
  type PictureLook,
} from "@sunfathom/contract";
import type { ProblemTexts } from "@sunfathom/words";
import { decoded } from "../../http/asked/decoded.js";
import { type QueryFields, queryFieldsOf, readQuery } from "../../http/asked/query.js";
import type { Look } from "./look.js";

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
  if (ofScene) errors.push(...misspelt(strangers(pairs, ofScene), ofScene, words));
  const checked = checkRequest<PictureLook>("PictureLook", { ...said }, words);
  if (errors.length > 0) return { query: rest, look: undefined, errors };
  if ("problem" in checked) return { query: rest, look: undefined, errors: checked.problem.errors ?? [] };
  const { format = defaults.format, width_px = defaults.width_px, theme = defaults.theme } = checked.request;
  return { query: rest, look: { format, width_px, theme }, errors };
}

const nameOf = (pair: string): string => decoded(pair.split("=", 1)[0] ?? "") ?? "";

/** Names that are neither of the scene nor of the picture, as many as a problem lists: a query may hold a thousand. */
function strangers(pairs: readonly string[], ofScene: QueryFields): string[] {
  const found = new Set<string>();
  for (const name of pairs.map(nameOf)) {
    if (found.size >= maxErrors) break;
    if (name !== "" && !fields.has(name) && !ofScene.has(name)) found.add(name);
  }
  return [...found];
}

/** Those of them that are meant to say how the picture is drawn: the scene's check knows no such names to offer. */
function misspelt(names: readonly string[], ofScene: QueryFields, words: ProblemTexts): FieldError[] {
  return names.flatMap((name) => {
    if (nearest(name, ofScene.keys())) return [];
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
