import type { FastifyInstance } from "fastify";
import { answerName, type KeptAnswer } from "./answers-kept.js";
import { isObject, type Json } from "./json.js";
import { sayShortened, shorten } from "./shorten.js";

interface Media {
  examples?: Record<string, { summary: string; value: Json }>;
}
interface Operation {
  summary: string;
  parameters?: { in: string; name: string; schema: { examples?: string[] } }[];
  requestBody?: { content: Record<string, Media> };
  responses: Record<string, { content: Record<string, object> }>;
}

/**
 * Asks a service what the description's own examples ask, and keeps the answers, shortened.
 * @throws Error where one is not answered
 */
export async function realAnswers(app: FastifyInstance): Promise<Record<string, KeptAnswer>> {
  const { paths } = app.swagger() as unknown as { paths: Record<string, Record<string, Operation>> };
  const answers: Record<string, KeptAnswer> = {};
  // What an answer gives to the next request: the token of a paper has its answers marked.
  let token: Json | undefined;
  for (const [path, { get, post }] of Object.entries(paths)) {
    const operation = post ?? get;
    const [mediaType] = Object.keys(operation?.responses["200"]?.content ?? {});
    if (operation === undefined) continue;
    const [first] = Object.values(post?.requestBody?.content["application/json"]?.examples ?? {});
    const url = path.replace(/\{([^{}]*)\}/g, (_, name) => exampleOf(operation, name));
    const body = first === undefined ? undefined : withToken(first.value, token);
    const reply = await app.inject(
      body === undefined ? { method: "GET", url } : { method: "POST", url, payload: body as object },
    );
    if (reply.statusCode !== 200) throw new Error(`${url}: ${reply.payload}`);
    const name = answerName(path);
    if (mediaType === "application/json") {
      const answer: Json = reply.json();
      if (isObject(answer)) token = answer["token"] ?? token;
      const { value, lists } = shorten(standIn(answer));
      const description = sayShortened(lists) ?? "From a real run, whole.";
      answers[name] = { summary: first?.summary ?? operation.summary, description, value };
    } else if (mediaType === "application/jsonl") {
      const { value, lists } = shorten(firstLine(reply.payload));
      answers[name] = {
        summary: first?.summary ?? operation.summary,
        description: ["A line from a real run.", sayShortened(lists)].filter(Boolean).join(" "),
        value,
      };
    } else if (mediaType === "image/svg+xml") {
      answers[name] = {
        summary: first?.summary ?? operation.summary,
        description: "From a real run: title and description, and an ellipsis in place of what is drawn.",
        value: undrawn(reply.payload),
      };
    } else if (mediaType === "application/pdf") {
      answers[name] = {
        summary: first?.summary ?? operation.summary,
        description: "How a real file begins: an ellipsis in place of what follows.",
        value: `${reply.rawPayload.subarray(0, 8).toString("latin1")}…`,
      };
    } else if (mediaType === "application/xml") {
      answers[name] = {
        summary: first?.summary ?? operation.summary,
        description: "From a real run, whole.",
        value: reply.payload,
      };
    } else {
      const listed = filesOf(reply.rawPayload).join("\n");
      answers[name] = {
        summary: first?.summary ?? operation.summary,
        description: "The names of the files in a real package, instead of its bytes.",
        value: listed,
      };
    }
  }
  return answers;
}

/** Of lines that come in any order the one whose text is the first. */
const firstLine = (text: string): Json => JSON.parse(text.split("\n").filter(Boolean).sort()[0] ?? "");

function exampleOf({ parameters = [] }: Operation, name: string): string {
  return parameters.find((one) => one.in === "path" && one.name === name)?.schema.examples?.[0] ?? "";
}

function withToken(body: Json, token: Json | undefined): Json {
  return isObject(body) && "token" in body && token !== undefined ? { ...body, token } : body;
}

/** The build is another with each change of the code: one stands for all. */
function standIn(answer: Json): Json {
  return isObject(answer) && "build" in answer ? { ...answer, build: "3f6c1b0e8d55" } : answer;
}

/** Names of a zip's files, from the headers before each (APPNOTE.TXT, 4.3.7). */
function filesOf(zip: Buffer): string[] {
  const names: string[] = [];
  const signature = Buffer.from("PK\x03\x04", "latin1");
  for (let at = zip.indexOf(signature); at !== -1; at = zip.indexOf(signature, at + 4)) {
    const length = zip.readUInt16LE(at + 26);
    names.push(zip.subarray(at + 30, at + 30 + length).toString("utf8"));
  }
  return names;
}

/** A picture without what is drawn on it. */
export function undrawn(svg: string): string {
  const [said, end] = ["</desc>", "</svg>"];
  return `${svg.slice(0, svg.indexOf(said) + said.length)}…${svg.slice(svg.lastIndexOf(end))}`;
}
