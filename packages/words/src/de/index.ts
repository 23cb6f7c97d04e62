export * from "../generated/de.js";
export { cautions } from "./cautions.js";
export { pictures } from "./pictures.js";
export { trips } from "./trips.js";
