import { expect, it } from "vitest";
import { wireSchemas } from "../generated/wire-schemas.js";
import { pictureLookSchema } from "./look-schema.js";

it("is the component's, with what that refers to in its place, and without defaults", () => {
  const { PictureLook, PictureFormat, PictureTheme } = wireSchemas;
  const { default: _, ...width_px } = PictureLook.properties?.["width_px"] ?? {};
  expect(pictureLookSchema).toEqual({
    ...PictureLook,
    properties: { format: PictureFormat, width_px, theme: PictureTheme },
  });
});
