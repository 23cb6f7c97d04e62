import { checkRequest } from "@sunfathom/answers";
import { pictureDefaults as defaults, type FieldError, type PictureLook } from "@sunfathom/contract";
import type { ProblemTexts } from "@sunfathom/words";
import type { Look } from "../pictures/look.js";
import { queryFieldsOf, readQuery } from "./query.js";

const fields = queryFieldsOf({ request: "PictureLook", besideLists: [] });

export interface LookAsked {
  /** The query without what says how the picture is drawn. */
  query: string;
  /** Undefined where something is wrong with it. */
  look: Look | undefined;
  errors: readonly FieldError[];
}

/** Reads how a picture is to be drawn from a query that may hold a scene, too. */
export function readLook(query: string, words: ProblemTexts): LookAsked {
  const pairs = query.split("&");
  const isOwn = (pair: string) => fields.has(nameOf(pair));
  const rest = pairs.filter((pair) => !isOwn(pair)).join("&");
  const { scene: said, errors } = readQuery(pairs.filter(isOwn).join("&"), fields, words.query);
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
