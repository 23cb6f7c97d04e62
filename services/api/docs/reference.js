// The page of the reference. It shows the description that lies beside it, also where a proxy serves both under a path.
import { prepare } from "./samples.js";
import { matching, searchable } from "./search.js";

const root = window.location.href.replace(/[?#].*$/, "").replace(/docs\/?$/, "");

/**
 * Marking takes the token of a paper that was drawn before: where the form still has the token of the example, a paper is drawn first,
 * so that the button works at once.
 */
const send = window.fetch.bind(window);
window.fetch = async (input, init) => {
  if (!(input instanceof Request) || !input.url.endsWith("/v1/quiz-answers")) return send(input, init);
  const body = await input.clone().text();
  const [shown] = Object.values(marking.requestBody.content["application/json"].examples);
  const { token } = shown.value;
  if (!body.includes(token)) return send(input, init);
  const [paper] = Object.values(drawing.requestBody.content["application/json"].examples);
  const headers = { "content-type": "application/json" };
  const drawn = await send(`${root}v1/quiz-items`, {
    method: "POST",
    headers,
    body: JSON.stringify(paper.value),
  });
  if (!drawn.ok) return drawn;
  const { token: fresh } = await drawn.json();
  return send(new Request(input, { body: body.replace(token, fresh), method: "POST" }));
};

const answer = await send(`${root}openapi.json`);
const description = prepare(await answer.json(), root.replace(/\/$/, ""));
const marking = description.paths["/v1/quiz-answers"].post;
const drawing = description.paths["/v1/quiz-items"].post;

const service = document.querySelector("#service");
if (service !== null) service.textContent = root.replace(/\/$/, "");

// Before the renderer takes the description: it puts other things in the place of references.
const calls = searchable(description);

await customElements.whenDefined("openapi-explorer");
const explorer = document.querySelector("openapi-explorer");
await explorer.loadSpec(description);

// The renderer's own search stands in its menu, which narrow screens do not show.
const find = document.querySelector("#find");
const found = document.querySelector("#found");
find.addEventListener("input", () => {
  const hits = matching(calls, find.value);
  found.replaceChildren(...hits.map(({ id, title }) => linkTo(id, title)));
});

function linkTo(id, title) {
  const link = document.createElement("a");
  link.href = `#?route=${id}`;
  link.textContent = title;
  link.addEventListener("click", () => explorer.scrollTo(id));
  const item = document.createElement("li");
  item.append(link);
  return item;
}
