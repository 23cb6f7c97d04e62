// The built service's own calculations, and its pictures as a thread draws them.
const home = new URL("../../../services/api/dist/", import.meta.url);
/** @param {string} module */
const built = (module) => import(new URL(module, home).href);

const { operations: all } = await built("operations.js");
const { draw, drawable } = await built("features/pictures/draw.js");

/** @type {readonly { name: string, reply: (scene: object) => { status: string } }[]} */
export const operations = all;

/** @type {readonly { name: string, draw: (scene: object, format: "svg" | "png") => string }[]} */
export const pictures = drawable.map(
  (/** @type {{ picture: { name: string } }} */ { picture: { name } }) => ({
    name,
    draw: (/** @type {object} */ scene, /** @type {"svg" | "png"} */ format) =>
      draw({ name, scene, look: { format, width_px: 800, theme: "light" }, language: "en" }).status,
  }),
);
