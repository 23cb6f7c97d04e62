import { problems } from "@sunfathom/words/en/problems";
import { describe, expect, it } from "vitest";
import { checkRequest as check } from "./check-request.js";

const checkRequest = (component: Parameters<typeof check>[0], raw: unknown) =>
  check(component, raw, problems);

describe("the body of a request that is no scene", () => {
  it("is handed on as it is where it is right", () => {
    const body = { level: "working", count: 10 };
    expect(checkRequest("QuizItemsRequest", body)).toEqual({ request: body });
  });

  it("is refused with a pointer to all that is wrong", () => {
    const checked = checkRequest("QuizItemsRequest", { level: "workin", count: 0, templates: ["red_reech"] });
    expect(checked).toMatchObject({
      problem: {
        code: "invalid_request",
        status: 400,
        errors: [
          { pointer: "/level", code: "not_an_option", did_you_mean: "working" },
          { pointer: "/count", code: "out_of_range", allowed: "a whole number, 1 to 200" },
          { pointer: "/templates/0", code: "not_an_option", did_you_mean: "red_reach" },
        ],
      },
    });
  });

  it("is refused where it expects another model", () => {
    const body = { level: "working", count: 10, expect_model_version: "1999.1.1" };
    expect(checkRequest("QuizItemsRequest", body)).toMatchObject({
      problem: { code: "model_version_mismatch", status: 409 },
    });
  });

  it.each([[null], [[]], ["level"], [undefined]])("is no %j", (body) => {
    expect(checkRequest("QuizItemsRequest", body)).toMatchObject({ problem: { errors: [{ pointer: "" }] } });
  });
});
