import type { ServiceDetails } from "../../problems/service-details.js";
import type { Texts } from "../../problems/texts.js";
import { spoken } from "../format.js";

/** Warum der Dienst eine Anfrage ablehnt. */
export const serviceDetails: Texts<ServiceDetails, string> = {
  budget_spent: ({ cost, window_s, wait_s }) =>
    `Dein Budget von ${cost} in ${window_s} s ist aufgebraucht. Versuch es in ${wait_s} s wieder.`,
  client_has_too_much_waiting: ({ wait_s }) =>
    `Von dir warten schon so viele Berechnungen, wie ein Client haben darf. Versuch es in ${wait_s} s wieder.`,
  service_has_too_much_waiting: ({ wait_s }) =>
    `Der Dienst hat mehr zu tun, als er schafft. Versuch es in ${wait_s} s wieder.`,
  answer_too_late: () => "Die Antwort hat zu lange gedauert.",
  thread_died: () => "Die Berechnung ist abgebrochen. Versuch es noch einmal.",
  starting_or_stopping: () => "Der Dienst startet gerade oder fährt herunter.",
  internal: () => "Die Anfrage konnte nicht beantwortet werden.",

  not_http: () => "Die Anfrage lässt sich nicht als HTTP lesen.",
  request_too_late: () => "Die Anfrage ist nicht rechtzeitig angekommen.",
  head_too_long: () => "Anfragezeile und Header sind größer als 16 kB.",
  too_many_headers: ({ most }) => `Die Anfrage hat mehr als ${most} Header.`,
  url_too_long: ({ most_characters }) => `Die URL hat mehr als ${most_characters} Zeichen.`,
  bad_escape: () => "Der Pfad enthält ein Escape, das sich nicht auflösen lässt.",
  host_missing: () => "Die Anfrage hat keinen Host-Header.",
  host_repeated: () => "Die Anfrage hat mehr als einen Host-Header.",
  other_expectation: () => "Der Expect-Header kann nur 100-continue sein.",
  body_of_other_length: () => "Der Body ist nicht so lang, wie Content-Length sagt.",
  not_understood: () => "Die Anfrage ist nicht zu verstehen.",

  body_too_long: ({ most }) => `Der Body ist größer als ${most}.`,
  body_too_deep: ({ most }) => `Listen und Objekte sind tiefer als ${most} Ebenen verschachtelt.`,
  body_not_declared_json: () => "Der Body ist nicht als application/json ausgewiesen.",
  body_not_declared: () => "Der Body hat keinen Content-Type.",
  body_in_other_charset: () => "Der Body ist in einer anderen Zeichenkodierung als UTF-8 ausgewiesen.",
  body_encoded: () => "Der Body hat eine Content-Encoding. Schick ihn ohne.",
  body_empty: () => "Der Body ist leer.",
  body_not_utf8: () => "Der Body ist kein UTF-8.",
  body_not_json: () => "Der Body lässt sich nicht als JSON lesen.",

  no_such_path: ({ near }) =>
    near === undefined ? "In /openapi.json stehen alle Pfade." : `Meinst du ${near}?`,
  nothing_for_you: () => "Unter diesem Pfad gibt es nichts für dich.",
  no_such_problem: ({ paths }) => `Die Arten sind: ${paths.join(", ")}`,
  no_such_client: ({ path }) => `Der einzige Client dieses Dienstes liegt unter ${path}.`,
  no_such_method: ({ allow, method }) => `Dieser Pfad nimmt ${allow}, nicht ${method}.`,
  no_proxy: () => "Dieser Dienst ist kein Proxy.",
  form_not_accepted: ({ forms }) => `Der Accept-Header schließt ${spoken(forms)} aus.`,

  no_instructor: ({ asked }) =>
    asked === "with_keys"
      ? "Es ist kein Schlüssel für Tauchlehrer eingerichtet, deshalb bekommt niemand Lösungen."
      : "Es ist kein Schlüssel für Tauchlehrer eingerichtet, deshalb kann niemand einen Seed vorgeben.",
  instructors_key_missing: ({ asked }) => `\`${asked}\` braucht den Schlüssel des Tauchlehrers.`,
  instructors_key_wrong: () => "Das ist nicht der Schlüssel des Tauchlehrers.",
};
