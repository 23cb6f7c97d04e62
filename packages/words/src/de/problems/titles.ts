import type { ProblemCode, SceneProblemCode } from "@sunfathom/contract";

/** Die Arten von Problemen, die eine Szene haben kann, je ein Satz. */
export const sceneProblemTitles: Readonly<Record<SceneProblemCode, string>> = {
  invalid_scene: "Die Szene ist nicht gültig.",
  model_version_mismatch: "Das Modell hat eine andere Version.",
  outside_the_model: "Die Szene ist gültig, liegt aber außerhalb dessen, was das Modell beantworten kann.",
};

/** Jede Art von Problem in einem Satz. */
export const problemTitles = (): Readonly<Record<ProblemCode, string>> => ({
  ...sceneProblemTitles,
  invalid_request: "Die Anfrage ist nicht gültig.",
  invalid_query: "Der Query-String ist nicht gültig.",
  malformed_json: "Der Body ist kein JSON.",
  malformed_request: "Die Anfrage ist kein wohlgeformtes HTTP.",
  unauthorized: "Der Schlüssel des Tauchlehrers fehlt oder ist falsch.",
  keys_not_offered: "Dieser Dienst gibt keine Pakete mit Lösungen heraus.",
  marks_held_back: "Der Test ist noch nicht geschlossen.",
  not_found: "Unter diesem Pfad gibt es nichts.",
  method_not_allowed: "Dieser Pfad nimmt diese Methode nicht an.",
  not_acceptable: "Die Antwort gibt es in keiner Form, die der Client annimmt.",
  request_timeout: "Die Anfrage ist nicht rechtzeitig angekommen.",
  questions_changed: "Die Fragen haben sich geändert.",
  body_too_large: "Der Body ist zu groß.",
  url_too_long: "Die URL ist zu lang.",
  unsupported_media_type: "Der Body hat einen Typ, der hier nicht verstanden wird.",
  paper_not_possible: "Die Anfrage ist gültig, aber so ein Test lässt sich nicht zusammenstellen.",
  responses_do_not_fit: "Die Antworten passen nicht zum Test.",
  token_refused: "Das Token ist nicht von diesem Dienst, oder es wurde verändert.",
  token_expired: "Das Token ist abgelaufen.",
  headers_too_large: "Die Header sind zu groß.",
  too_many_requests: "Der Client hat zu viel angefragt.",
  internal_error: "Im Dienst ist ein Fehler aufgetreten.",
  unavailable: "Der Dienst kann gerade nicht antworten.",
});
