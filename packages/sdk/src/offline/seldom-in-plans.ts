import { seldomEach } from "./seldom.js";

const load = () => import("./plans/rest.js");

/** As `seldomEach`, for what only plans ask for: a page without plans loads none of it. */
export const seldomEachInPlans = (name: string, codes: readonly string[]) => seldomEach(name, codes, load);
