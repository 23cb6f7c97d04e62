// In which language papers, marks, packages and what is wrong with them come: by RFC 9110, sections 8.5, 12.5.4 and 12.5.5, and by
// what the request itself asks for.
import { openPaper } from "@sunfathom/quiz";
import type { FastifyInstance } from "fastify";
import { strFromU8, unzipSync } from "fflate";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { buildApp } from "../../build-app.test-support.js";
import { instructorKey, keyring, post, quizSettings, rightAnswer } from "./quiz.test-support.js";

let app: FastifyInstance;
beforeAll(async () => {
  app = await buildApp({ quiz: quizSettings });
  await app.ready();
});
afterAll(() => app.close());

const asked = {
  level: "working",
  count: 4,
  templates: ["way_out", "pay_with_iso", "kelvin_order", "density_match"],
};
const bearer = { authorization: `Bearer ${instructorKey}` };
const likes = (value: string) => ({ "accept-language": value });

/** Words of the caution that every paper has. */
const oneOfEach = { en: "not a dive plan", es: "no un plan de inmersión" };
const languageOf = (text: string) => Object.entries(oneOfEach).find(([, words]) => text.includes(words))?.[0];
const told = ({ headers, text }: { headers: Record<string, string>; text: string }) => [
  headers["content-language"],
  languageOf(text),
];

describe("a paper", () => {
  it.each<[string, string, object, Record<string, string>]>([
    ["nobody", "en", {}, {}],
    ["the body", "es", { language: "es" }, {}],
    ["the body against Accept-Language", "en", { language: "en" }, likes("es")],
    ["Accept-Language", "es", {}, likes("es-419, en;q=0.5")],
    [
      "Accept-Language, which likes a language without questions best",
      "es",
      {},
      likes("de, es;q=0.8, en;q=0.5"),
    ],
    ["Accept-Language, by a caller who reads German", "en", {}, likes("de-AT")],
    ["Accept-Language, by a caller who reads French", "en", {}, likes("fr")],
  ])("is in the language that is asked for by %s: %s", async (_, language, body, headers) => {
    const answered = await post(app, "items", { ...asked, ...body }, headers).expect(200);
    expect(told(answered)).toEqual([language, language]);
    expect(String(answered.headers["vary"]).split(", ")).toContain("Accept-Language");
    const { request } = await openPaper(answered.body.token, { keyring, now_s: Date.now() / 1000 });
    expect(request.language).toBe(language);
  });

  it("of a seed asks the same in both languages", async () => {
    const [english, spanish] = await Promise.all(
      (["en", "es"] as const).map(async (language) => {
        const { body } = await post(app, "items", { ...asked, seed: "mayo", language }, bearer).expect(200);
        return body;
      }),
    );
    const said = (body: { items: { stem: string }[] }) => body.items.map(({ stem }) => stem);
    const asks = (body: {
      items: { fingerprint: string; id: string; template: string; difficulty: number }[];
    }) =>
      body.items.map(({ fingerprint, id, template, difficulty }) => ({
        fingerprint,
        id,
        template,
        difficulty,
      }));
    expect(asks(spanish)).toEqual(asks(english));
    for (const [i, stem] of said(spanish).entries()) expect(stem).not.toBe(said(english)[i]);
  });
});

describe("marks", () => {
  const marked = async (headers: Record<string, string>) => {
    const { body } = await post(app, "items", { ...asked, language: "es" }).expect(200);
    const { items } = await openPaper(body.token, { keyring, now_s: Date.now() / 1000 });
    const responses = items.map((item) => ({ item: item.id, ...rightAnswer(item) }));
    return {
      token: body.token,
      answered: await post(app, "answers", { token: body.token, responses }, headers),
    };
  };

  it.each([{}, likes("en"), likes("de")])(
    "are in the language of their paper, whatever %j likes",
    async (headers) => {
      const { answered } = await marked(headers);
      expect(answered.status).toBe(200);
      expect(told(answered)).toEqual(["es", "es"]);
      expect(answered.body).toMatchObject({ score: 4, max_score: 4 });
      expect(answered.text).toContain("Correcto.");
      expect(answered.text).not.toContain("Right.");
    },
  );

  it("say what does not fit in the paper's language, but to a caller who says what it reads", async () => {
    const { token } = await marked({});
    const wrong = { token, responses: [{ item: "q99" }] };
    const [spanish, german] = [
      await post(app, "answers", wrong).expect(422),
      await post(app, "answers", wrong, likes("de")).expect(422),
    ];
    expect([spanish.headers["content-language"], german.headers["content-language"]]).toEqual(["es", "de"]);
    expect(spanish.body.errors[0].message).toContain("El cuestionario no tiene");
  });

  // Decimal comma and point: ISO 80000-1, 7.2.2.
  it("take numbers as they are typed in either language, and neither 1,250 nor 1.250", async () => {
    const { body } = await post(app, "items", {
      ...asked,
      count: 1,
      templates: ["lamp_falloff"],
      language: "es",
    });
    const { items } = await openPaper(body.token, { keyring, now_s: Date.now() / 1000 });
    const [item] = items;
    if (item?.interaction !== "numeric") throw new Error("no number");
    const ask = (typed: string) =>
      post(app, "answers", { token: body.token, responses: [{ item: "q1", typed }] });
    const value = item.value.toFixed(1);
    for (const typed of [
      value,
      value.replace(".", ","),
      `${value.replace(".", ",")} pasos`,
      `${value} stops`,
    ])
      expect((await ask(typed)).body).toMatchObject({ score: 1 });
    for (const typed of ["1.250", "1,250"]) {
      const { body: problem } = await ask(typed).expect(422);
      expect(problem.errors[0]).toMatchObject({ parameters: { case: "number_ambiguous" } });
    }
    const { body: other } = await ask("3 m").expect(422);
    expect(other.errors[0].message).toContain("pasos");
  });
});

describe("a package", () => {
  it.each(["3.0", "2.1"])(
    "of version %s says in each file that it is in Spanish, and is",
    async (version) => {
      const body = {
        ...asked,
        count: 3,
        version,
        title: "Color bajo el agua",
        with_keys: true,
        templates: ["red_reach", "lamp_falloff", "way_out"],
      };
      const reply = await post(app, "packages", body, { ...bearer, ...likes("es") })
        .buffer(true)
        .parse((response, done) => {
          const chunks: Buffer[] = [];
          response.on("data", (chunk) => chunks.push(chunk));
          response.on("end", () => done(null, Buffer.concat(chunks)));
        })
        .expect(200);
      expect(reply.headers["content-language"]).toBe("es");
      expect(String(reply.headers["vary"])).toContain("Accept-Language");
      const files = Object.entries(unzipSync(reply.body)).map(
        ([path, bytes]) => [path, strFromU8(bytes)] as const,
      );
      const said = files.filter(([path]) => path !== "imsmanifest.xml");
      expect(said.some(([path]) => path.endsWith(".svg"))).toBe(true);
      for (const [path, content] of said) {
        expect(content, path).toContain('xml:lang="es"');
        expect(content, path).not.toMatch(/\b(?:the|stops|light|water|lights|Sources)\b/);
      }
      const items = said.map(([, content]) => content).join("\n");
      expect(items).toMatch(/title="q\d: hasta dónde llega el rojo"/);
      expect(items).toContain(" pasos<");
      expect(items).toContain("no un plan de inmersión");
    },
  );
});

describe("a refusal", () => {
  it("is in the language that the body asks for, or the caller reads, and names the languages there are", async () => {
    const spanish = await post(app, "items", { ...asked, count: 0, language: "es" }).expect(400);
    expect(spanish.headers["content-language"]).toBe("es");
    const german = await post(app, "items", { ...asked, language: "de" }).expect(400);
    expect(german.headers["content-language"]).toBe("de");
    expect(german.body.errors[0]).toMatchObject({ pointer: "/language", code: "not_an_option" });
    expect(german.body.errors[0].allowed).toContain("en, es");
  });
});
