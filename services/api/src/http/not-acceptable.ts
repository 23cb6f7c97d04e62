import type { FastifyReply, FastifyRequest } from "fastify";
import { accepts, type MediaType } from "./accept.js";
import { sendPlainProblem } from "./send-problem.js";

declare module "fastify" {
  interface FastifyContextConfig {
    /** Media type of the answer; JSON when left out. */
    answersIn?: MediaType;
  }
}

/** For routes that answer in one form and no other: says so to whoever does not take it. */
export function refuseOtherForms(request: FastifyRequest, reply: FastifyReply, done: () => void): void {
  // What the description says nothing of, such as the documentation page, has forms of its own.
  const { schema, config } = request.routeOptions;
  const form = config.answersIn ?? "application/json";
  if (schema === undefined || schema.hide === true || accepts(request.headers.accept, form)) done();
  else sendPlainProblem(reply, "not_acceptable", `The Accept header of the request leaves out ${form}.`);
}
