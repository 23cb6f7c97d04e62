import type { FieldText, Texts } from "../../problems/texts.js";
import type { QuizRefusals } from "../../quiz/refusals.js";

/** Warum das Quiz eine Anfrage ablehnt. */
export const quizRefusals: Texts<QuizRefusals, FieldText> = {
  count_out_of_range: ({ most }) => ({
    message: `Ein Test hat 1 bis ${most} Fragen.`,
    allowed: `eine ganze Zahl, 1 bis ${most}`,
  }),
  template_unknown: ({ template }) => ({
    message: `Die Vorlage ${JSON.stringify(template)} gibt es nicht.`,
    allowed: "eine Art von Frage, die in der Beschreibung steht",
  }),
  template_not_at_level: ({ template, levels }) => ({
    message: `${template} wird auf dieser Stufe nicht gefragt, nur auf: ${levels.join(", ")}.`,
    allowed: "Arten von Fragen, die es auf dieser Stufe gibt",
  }),
  too_few_questions: ({ found }) => ({
    message: `Diese Vorlagen haben auf dieser Stufe nur ${found} verschiedene Fragen, die nicht ausgeschlossen sind. Frag nach weniger, oder nach mehr Vorlagen oder Themen.`,
    allowed: "weniger Fragen, oder mehr Arten von Fragen, oder alle ohne `templates`",
  }),
  response_malformed: (p) => ({
    message: malformed(p),
    allowed: "eine Antwort je Frage, in der Form, die ihre Interaktion annimmt, mit ids, die sie hat",
  }),
  item_unknown: ({ item }) => ({
    message: `Der Test hat keine Frage ${JSON.stringify(item)}.`,
    allowed: "ids von Fragen des Tests",
  }),
  token_malformed: () => ofToken("Das ist kein Token dieses Dienstes."),
  token_key_unknown: () => ofToken("Der Schlüssel dieses Tokens ist nicht oder nicht mehr in Gebrauch."),
  token_refused: () => ofToken("Dieses Token wurde verändert oder mit einem anderen Schlüssel versiegelt."),
  token_expired: ({ expired_at }) => ({
    message: `Dieses Token ist um ${expired_at} abgelaufen.`,
    allowed: "ein Token, das nicht abgelaufen ist",
  }),
  questions_changed: ({ model_version }) => ({
    message: `Die Fragen wurden mit Modellversion ${model_version} gestellt und kämen heute anders heraus. Fordere einen neuen Test an.`,
    allowed: "ein Token eines Tests von heute",
  }),
  closes_at_missing: () => ({
    message: "Ein Test mit release after_close braucht die Zeit, zu der er schließt.",
    allowed: "die Zeit, zu der der Test schließt (RFC 3339)",
  }),
  closes_at_without_effect: () => ({
    message: "Nur ein Test mit release after_close hat eine Zeit, zu der er schließt.",
    allowed: "kein `closes_at`, oder dazu `release` `after_close`",
  }),
  closes_at_out_of_range: ({ case: what, most_days }) => ({
    message: {
      past: "Der Test wäre schon geschlossen.",
      no_such_day: "Diesen Tag hat der Monat nicht.",
      too_far_ahead: `Ein Test kann höchstens ${most_days} Tage offen bleiben.`,
    }[what],
    allowed: `eine Zeit in der Zukunft, höchstens ${most_days} Tage voraus`,
  }),
  release_without_effect: () => ({
    message: "Ein Paket mit Lösungen verrät sie jedem, der es in der Hand hat.",
    allowed: "ein Paket ohne Lösungen, oder weder `release` noch `closes_at`",
  }),
  version_without_effect: () => ({
    message: "Nur ein Paket mit `format` `qti` hat eine Version dieses Standards.",
    allowed: "kein `version`, oder `format` `qti`",
  }),
  practice_needs_keys: () => ({
    message:
      "Ein Übungspaket wertet die Antworten selbst aus und enthält deshalb die Lösungen: Erlaub das mit `with_keys` `true`.",
    allowed: "nur `true`; dafür braucht es den Schlüssel des Tauchlehrers",
  }),
  not_closed_yet: ({ closes_at }) => ({
    message: `Die Antworten passen zum Test. Er schließt um ${closes_at}: Schick sie dann noch einmal, denn hier wird nichts gespeichert.`,
    allowed: "Antworten auf einen geschlossenen Test, oder der Schlüssel des Tauchlehrers",
  }),
};

const ofToken = (message: string): FieldText => ({
  message,
  allowed: "ein Token, wie der Dienst es mit dem Test ausgegeben hat",
});

function malformed(p: QuizRefusals["response_malformed"]): string {
  switch (p.case) {
    case "other_field":
      return `Diese Frage wird mit ${p.field} beantwortet, nicht mit ${p.other}.`;
    case "no_such_entry":
      return `Diese Frage hat keinen Eintrag ${JSON.stringify(p.entry)}.`;
    case "entry_repeated":
      return "Jeder Eintrag kann nur einmal genannt werden.";
    case "too_many_chosen":
      return `Hier lassen sich höchstens ${p.most} auswählen.`;
    case "not_a_number":
      return "Die Antwort muss eine endliche Zahl sein.";
    case "number_ambiguous":
      return `${JSON.stringify(p.typed)} lässt sich auf zwei Arten lesen. Schreib Tausender ohne Trennzeichen und Dezimalen so, dass nicht genau drei Ziffern folgen.`;
    case "other_unit":
      return p.unit === ""
        ? `${JSON.stringify(p.typed)} hat eine Einheit, gefragt ist eine bloße Zahl.`
        : `${JSON.stringify(p.typed)} hat eine andere Einheit: Antworte in ${p.unit}, oder ohne Einheit.`;
    case "order_incomplete":
      return "Jeder Eintrag hat seinen Platz in der Reihenfolge.";
    case "answered_twice":
      return `Frage ${p.item} ist zweimal beantwortet.`;
  }
}
