import type { FieldText, Texts } from "../../problems/texts.js";
import type { QuizRefusals } from "../../quiz/refusals.js";

/** Pourquoi le questionnaire refuse une requête. */
export const quizRefusals: Texts<QuizRefusals, FieldText> = {
  count_out_of_range: ({ most }) => ({
    message: `Un questionnaire a de 1 à ${most} questions.`,
    allowed: `un nombre entier, de 1 à ${most}`,
  }),
  template_unknown: ({ template }) => ({
    message: `Le modèle de question ${JSON.stringify(template)} n’existe pas.`,
    allowed: "un type de question que la description cite",
  }),
  template_not_at_level: ({ template, levels }) => ({
    message: `${template} n’existe qu’à ces niveaux : ${levels.join(", ")}.`,
    allowed: "des types de question que ce niveau comporte",
  }),
  too_few_questions: ({ found }) => ({
    message: `À ce niveau, ces modèles ne donnent plus que ${found} questions. Demandez-en moins, ou davantage de modèles ou de thèmes.`,
    allowed: "moins de questions, ou plus de types de question, ou tous en omettant `templates`",
  }),
  response_malformed: (p) => ({
    message: malformed(p),
    allowed: "une réponse par question, dans la forme que son interaction accepte, avec des id qu’elle a",
  }),
  item_unknown: ({ item }) => ({
    message: `Le questionnaire n’a pas de question ${JSON.stringify(item)}.`,
    allowed: "les id des questions du questionnaire",
  }),
  token_malformed: () => ofToken("Ce n’est pas un jeton de ce service."),
  token_key_unknown: () => ofToken("La clé de ce jeton n’est pas, ou n’est plus, en service."),
  token_refused: () => ofToken("Ce jeton a été modifié, ou scellé avec une autre clé."),
  token_expired: ({ expired_at }) => ({
    message: `Ce jeton a expiré le ${expired_at}.`,
    allowed: "un jeton qui n’a pas expiré",
  }),
  questions_changed: ({ model_version }) => ({
    message: `Les questions ont été faites avec la version ${model_version} du modèle, et seraient différentes aujourd’hui. Demandez un nouveau questionnaire.`,
    allowed: "le jeton d’un questionnaire fait aujourd’hui",
  }),
  closes_at_missing: () => ({
    message: "Un questionnaire avec release after_close doit avoir une heure de clôture.",
    allowed: "l’heure de clôture du questionnaire (RFC 3339)",
  }),
  closes_at_without_effect: () => ({
    message: "Seul un questionnaire avec release after_close a une heure de clôture.",
    allowed: "pas de `closes_at`, ou `release` `after_close` avec lui",
  }),
  closes_at_out_of_range: ({ case: what, most_days }) => ({
    message: {
      past: "Le questionnaire serait déjà clos.",
      no_such_day: "Ce mois n’a pas ce jour.",
      too_far_ahead: `Un questionnaire peut rester ouvert ${most_days} jours au plus.`,
    }[what],
    allowed: `une heure à venir, dans ${most_days} jours au plus`,
  }),
  release_without_effect: () => ({
    message: "Un paquet avec corrigés livre ses solutions à quiconque le possède.",
    allowed: "un paquet sans corrigés, ou ni `release` ni `closes_at`",
  }),
  version_without_effect: () => ({
    message: "Seul un paquet de `format` `qti` a une version de cette norme.",
    allowed: "pas de `version`, ou `format` `qti`",
  }),
  practice_needs_keys: () => ({
    message:
      "Un paquet d’entraînement corrige lui-même les réponses et contient donc les solutions : autorisez-le avec `with_keys` `true`.",
    allowed: "seulement `true`, ce qui demande la clé du moniteur",
  }),
  not_closed_yet: ({ closes_at }) => ({
    message: `Les réponses vont avec le questionnaire. Il ferme le ${closes_at} : renvoyez-les alors, car le service ne conserve rien.`,
    allowed: "les réponses à un questionnaire clos, ou la clé du moniteur",
  }),
};

const ofToken = (message: string): FieldText => ({
  message,
  allowed: "un jeton tel que le service l’a donné avec le questionnaire",
});

function malformed(p: QuizRefusals["response_malformed"]): string {
  switch (p.case) {
    case "other_field":
      return `On répond à cette question avec ${p.field}, pas avec ${p.other}.`;
    case "no_such_entry":
      return `Cette question n’a pas d’élément ${JSON.stringify(p.entry)}.`;
    case "entry_repeated":
      return "Vous ne pouvez citer chaque élément qu’une fois.";
    case "too_many_chosen":
      return `Vous pouvez en choisir ${p.most} au plus ici.`;
    case "not_a_number":
      return "La réponse doit être un nombre fini.";
    case "number_ambiguous":
      return `${JSON.stringify(p.typed)} peut se lire de deux façons. Écrivez les milliers sans séparateur, et évitez d’écrire exactement trois décimales.`;
    case "other_unit":
      return p.unit === ""
        ? `${JSON.stringify(p.typed)} a une unité, mais la question demande un nombre seul.`
        : `${JSON.stringify(p.typed)} a une autre unité : répondez en ${p.unit}, ou sans unité.`;
    case "order_incomplete":
      return "Mettez tous les éléments dans l’ordre.";
    case "answered_twice":
      return `Vous avez répondu deux fois à la question ${p.item}.`;
  }
}
