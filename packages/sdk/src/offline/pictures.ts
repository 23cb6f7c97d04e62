import { NotOfflineError } from "../core/errors.js";
import type { Input, Operation, SendOptions } from "../core/types.js";
import { expecting } from "../core/with-model-version.js";
import { Pictures } from "../generated/api.js";
import { InvalidQueryError } from "../generated/problems.js";
import { computing } from "./compute.js";
import type { OfflineOptions } from "./options.js";
import { begin, brought, later, mayNeedAlso } from "./ready.js";

const drawing = () => import("./drawn/drawing.js");

/**
 * The pictures of a service, drawn here: the same SVG, to the byte, for the same scene and build. PNG takes a service. All that draws is
 * loaded behind what a page starts with, and a picture waits for it.
 * @example
 * const pictures = offlinePictures({ language: "de" });
 * const svg = await pictures.lightWithDepth({ water_type: "IB", depth_m: 12 }, { width_px: 360, theme: "dark" });
 */
export function offlinePictures(options: OfflineOptions = {}): Pictures {
  mayNeedAlso(async () => (await drawing()).tongueOf(options.language ?? "en"));
  begin(options.language);
  return new Pictures(({ path }: Operation, { body }: Input, call?: SendOptions) =>
    computing(() => drawn(path, body, { ...call }, options), call),
  );
}

/** @throws ProblemError where there is no such picture of the scene @throws NotOfflineError for PNG */
async function drawn(
  path: string,
  body: object | undefined,
  { format, width_px, theme }: SendOptions,
  { expectModelVersion, language = "en" }: OfflineOptions,
): Promise<string> {
  if (format === "png")
    throw new NotOfflineError(
      "Only a service draws PNG: leave format out, or ask for svg, and get an SVG here.",
    );
  const scene = expectModelVersion === undefined ? body : expecting(expectModelVersion, body ?? {});
  const { language: asked } = Object(body) as { language?: unknown };
  const { textsIn } = await later();
  const texts = await textsIn(asked, language);
  const { draw, tongueOf } = await brought(drawing);
  // As a service has it: the scene's language where it is one, else the client's.
  const spoken = texts === undefined ? "en" : isOneOf(asked) ? asked : language;
  const tongue = await brought(() => tongueOf(spoken));
  const look = { format, width_px, theme };
  const said = Object.fromEntries(Object.entries(look).filter(([, value]) => value !== undefined));
  const received: unknown = JSON.parse(JSON.stringify(scene ?? null));
  const made = draw(path, received, said, tongue);
  if (made.status === "ok") return made.svg;
  if (made.status === "problem") throw new InvalidQueryError(made.problem, made.problem);
  const { refusalError } = await later();
  throw refusalError(made.refusal, tongue.problems);
}

const isOneOf = (language: unknown): language is string =>
  language === "de" || language === "es" || language === "fr";
