import type { ProblemCode, SceneProblemCode } from "@sunfathom/contract";

/** Les types de problème qu’une scène peut avoir, chacun en une phrase. */
export const sceneProblemTitles: Readonly<Record<SceneProblemCode, string>> = {
  invalid_scene: "La scène n’est pas valide.",
  model_version_mismatch: "Le modèle a une autre version.",
  outside_the_model: "La scène est valide, mais hors de ce que le modèle sait traiter.",
};

/** Chaque type de problème en une phrase. Fait à la demande : sans service, on ne rencontre que ceux des scènes. */
export const problemTitles = (): Readonly<Record<ProblemCode, string>> => ({
  ...sceneProblemTitles,
  invalid_request: "La requête n’est pas valide.",
  invalid_query: "Les paramètres de l’URL ne sont pas valides.",
  malformed_json: "Le corps n’est pas du JSON.",
  malformed_request: "La requête n’est pas du HTTP bien formé.",
  unauthorized: "La clé du moniteur manque ou est fausse.",
  keys_not_offered: "Ce service ne fournit pas de paquets avec corrigés.",
  marks_held_back: "Le questionnaire n’est pas encore clos.",
  not_found: "Il n’y a rien à ce chemin.",
  method_not_allowed: "Ce chemin n’accepte pas cette méthode.",
  not_acceptable: "La réponse n’existe sous aucune forme que vous acceptez.",
  request_timeout: "La requête n’est pas arrivée à temps.",
  questions_changed: "Les questions ont changé.",
  body_too_large: "Le corps est trop volumineux.",
  url_too_long: "L’URL est trop longue.",
  unsupported_media_type: "Le service ne comprend pas ce type de corps.",
  paper_not_possible: "La requête est valide, mais un tel questionnaire est impossible.",
  responses_do_not_fit: "Les réponses ne vont pas avec le questionnaire.",
  token_refused: "Le jeton n’est pas de ce service, ou a été modifié.",
  token_expired: "Le jeton a expiré.",
  headers_too_large: "Les en-têtes sont trop volumineux.",
  too_many_requests: "Vous en avez trop demandé.",
  internal_error: "Le service a rencontré une erreur.",
  unavailable: "Le service ne peut pas répondre maintenant.",
});
