// The public surface. A change here is a change for integrators: add freely, take away with a new major version alone.
import { readFileSync } from "node:fs";
import { expect, it } from "vitest";
import * as online from "../index.js";
import * as batches from "../offline/batches.js";
import * as offline from "../offline/index.js";
import * as parts from "../offline/parts.js";
import * as pictures from "../offline/pictures.js";

const description = JSON.parse(
  readFileSync(new URL("../../../../openapi/openapi.json", import.meta.url), "utf8"),
);

interface Described {
  operationId: string;
  tags: string[];
}

/** Of the description's operations, those that the client computes by POST or reads, by the names that its methods have. */
function methodsTagged(tag: string): string[] {
  const methods = Object.values<Record<string, Described>>(description.paths).flatMap(({ post, get }) => {
    const operation = post ?? get;
    if (!operation?.tags.includes(tag)) return [];
    const name = operation.operationId.replace(/^(compute|list)/, "");
    return [name.charAt(0).toLowerCase() + name.slice(1)];
  });
  return methods;
}

it("the online entry exports the client, its cache, its errors and what it was made from", () => {
  const kinds = Object.keys(description.components.schemas)
    .filter((name) => name.endsWith("Problem"))
    .map((name) => name.replace(/(Error)?Problem$/, "Error"));
  expect(kinds).toEqual(
    expect.arrayContaining([
      "BodyTooLargeError",
      "HeadersTooLargeError",
      "InternalError",
      "InvalidQueryError",
      "InvalidRequestError",
      "InvalidSceneError",
      "KeysNotOfferedError",
      "MalformedJsonError",
      "MalformedRequestError",
      "MethodNotAllowedError",
      "ModelVersionMismatchError",
      "NotAcceptableError",
      "NotFoundError",
      "OutsideTheModelError",
      "PaperNotPossibleError",
      "QuestionsChangedError",
      "RequestTimeoutError",
      "ResponsesDoNotFitError",
      "TokenExpiredError",
      "TokenRefusedError",
      "TooManyRequestsError",
      "UnauthorizedError",
      "UnavailableError",
      "UnsupportedMediaTypeError",
      "UrlTooLongError",
    ]),
  );
  expect(Object.keys(online).sort()).toEqual(
    [
      ...kinds,
      "AbortedError",
      "BatchEndedError",
      "ConnectionError",
      "NotOfflineError",
      "ProblemError",
      "ResponseError",
      "Sunfathom",
      "SunfathomError",
      "TimeoutError",
      "UnexpectedResponseError",
      "descriptionHash",
      "descriptionVersion",
      "memoryCache",
    ].sort(),
  );
});

it("the offline entry exports its client and the version of its model", () => {
  expect(Object.keys(offline).sort()).toEqual(["OfflineSunfathom", "modelVersion", "ready"]);
});

it("the entry with the parts of the offline mode exports each, and what makes a client of them", () => {
  const computed = [...methodsTagged("Calculations"), ...methodsTagged("Reference data")];
  expect(computed).toEqual(expect.arrayContaining(["attenuation", "filterChoice", "waterTypes"]));
  expect(Object.keys(parts).sort()).toEqual([...computed, "modelVersion", "offlineWith", "ready"].sort());
  expect(parts.modelVersion).toBe(offline.modelVersion);
});

it("the entry with batches exports what makes them of parts", () => {
  expect(Object.keys(batches)).toEqual(["batchesWith"]);
});

it("the entry with pictures exports what draws them", () => {
  expect(Object.keys(pictures)).toEqual(["offlinePictures"]);
});

it("both clients have a method for every operation of the description, its GET twins apart", () => {
  const online_ = new online.Sunfathom({ baseUrl: "https://light.example.org" });
  const groups = [
    online_.calculations,
    online_.reference,
    online_.pictures,
    online_.sheets,
    online_.quiz,
    online_.service,
    online_.trips,
  ];
  const methods = groups.flatMap((group) =>
    Object.getOwnPropertyNames(Object.getPrototypeOf(group)).filter((name) => name !== "constructor"),
  );
  // A batch is a stream: its method is no member of a group that is generated. What comes in another form, too, has a method for that.
  expect(Object.keys(online_.batches)).toEqual(["run"]);
  const others = methods.filter((name) => /(Calendar|Captions)$/.test(name));
  expect(others.sort()).toEqual(["diveTimelineCaptions", "tripAdviceCalendar"]);
  expect(methods).toHaveLength(Object.keys(description.paths).length - 1 + others.length);
  expect(methods).toEqual(
    expect.arrayContaining([
      ...methodsTagged("Calculations"),
      ...methodsTagged("Reference data"),
      "drawItems",
      "markAnswers",
      "packItems",
      "liveness",
      "readiness",
      "problemKind",
    ]),
  );
});

it("names the description that it was made from", () => {
  expect(online.descriptionVersion).toBe(description.info.version);
  expect(online.descriptionHash).toMatch(/^[0-9a-f]{64}$/);
});

it("every error is a SunfathomError with its own name", () => {
  const classes = Object.entries(online).filter(([name]) => name.endsWith("Error"));
  for (const [name, Kind] of classes) {
    if (typeof Kind !== "function") throw new Error(name);
    expect(Reflect.construct(Kind, [{ type: "/problems/x" }, { status: 400 }])).toMatchObject({ name });
    expect(Kind === online.SunfathomError || Kind.prototype instanceof online.SunfathomError).toBe(true);
  }
});
