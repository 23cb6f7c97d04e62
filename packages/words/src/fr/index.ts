export * from "../generated/fr.js";
export { cautions } from "./cautions.js";
export { pictures } from "./pictures.js";
export { trips } from "./trips.js";
