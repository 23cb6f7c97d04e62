import type { FastifyReply, FastifyRequest } from "fastify";
import { sendRefusal } from "../sent/send-problem.js";
import { accepts, type MediaType } from "./accept.js";

declare module "fastify" {
  interface FastifyContextConfig {
    /** Media type of the answer, or those that it may come in; JSON when left out. */
    answersIn?: MediaType | readonly MediaType[];
  }
}

/** For routes that answer in some forms and no other: says so to whoever does not take it. */
export function refuseOtherForms(request: FastifyRequest, reply: FastifyReply, done: () => void): void {
  // What the description says nothing of, such as the documentation page, has forms of its own.
  const { schema, config } = request.routeOptions;
  const isDescribed = schema !== undefined && schema.hide !== true;
  const forms = [config.answersIn ?? (isDescribed ? "application/json" : [])].flat();
  const { accept } = request.headers;
  if (forms.length === 0 || forms.some((form) => accepts(accept, form))) done();
  else sendRefusal(reply, { because: "form_not_accepted", forms });
}
