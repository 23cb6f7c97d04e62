export * from "../generated/en.js";
export { cautions } from "./cautions.js";
