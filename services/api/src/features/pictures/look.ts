import type { PictureLook } from "@sunfathom/contract";
import type { pictures } from "@sunfathom/pictures";

/** How a picture is drawn, all of it said. */
export type Look = { [Name in keyof PictureLook]-?: Exclude<PictureLook[Name], undefined> };

export type PictureName = (typeof pictures)[number]["name"];
