import type { ServiceDetails } from "../../problems/service-details.js";
import type { Texts } from "../../problems/texts.js";
import { spoken } from "../format.js";

/** Pourquoi le service refuse une requête. */
export const serviceDetails: Texts<ServiceDetails, string> = {
  budget_spent: ({ cost, window_s, wait_s }) =>
    `Vous avez épuisé votre budget de ${cost} en ${window_s} s. Réessayez dans ${wait_s} s.`,
  client_has_too_much_waiting: ({ wait_s }) =>
    `Vous avez autant de calculs en attente qu’un client peut en avoir. Réessayez dans ${wait_s} s.`,
  service_has_too_much_waiting: ({ wait_s }) => `Le service est surchargé. Réessayez dans ${wait_s} s.`,
  answer_too_late: () => "La réponse a trop tardé.",
  thread_died: () => "Le calcul s’est arrêté avant la fin. Réessayez.",
  starting_or_stopping: () => "Le service démarre ou s’arrête.",
  internal: () => "La requête n’a pas pu recevoir de réponse.",

  not_http: () => "La requête n’est pas lisible comme HTTP.",
  request_too_late: () => "La requête n’est pas arrivée à temps.",
  head_too_long: () => "La ligne de requête et les en-têtes dépassent 16 kB.",
  too_many_headers: ({ most }) => `La requête a plus de ${most} en-têtes.`,
  url_too_long: ({ most_characters }) => `L’URL a plus de ${most_characters} caractères.`,
  bad_escape: () => "Le chemin contient un échappement qui ne se décode pas.",
  host_missing: () => "La requête n’a pas d’en-tête Host.",
  host_repeated: () => "La requête a plusieurs en-têtes Host.",
  other_expectation: () => "L’en-tête Expect ne peut valoir que 100-continue.",
  body_of_other_length: () => "Le corps n’a pas la longueur qu’annonce Content-Length.",
  not_understood: () => "La requête est incompréhensible.",

  body_too_long: ({ most }) => `Le corps dépasse ${most.replace(" ", "\u202f")}.`,
  body_too_deep: ({ most }) => `Les listes et les objets sont imbriqués sur plus de ${most} niveaux.`,
  body_not_declared_json: () => "Le corps n’est pas déclaré comme application/json.",
  body_not_declared: () => "Le corps n’a pas de Content-Type.",
  body_in_other_charset: () => "Le corps est déclaré dans un autre encodage qu’UTF-8.",
  body_encoded: () => "Le corps a un encodage de contenu. Envoyez-le sans.",
  body_empty: () => "Le corps est vide.",
  body_not_utf8: () => "Le corps n’est pas en UTF-8.",
  body_not_json: () => "Le corps n’est pas lisible comme JSON.",

  no_such_path: ({ near }) =>
    near === undefined ? "/openapi.json donne la liste des chemins." : `Vouliez-vous dire ${near} ?`,
  nothing_for_you: () => "Il n’y a rien pour vous à ce chemin.",
  no_such_problem: ({ paths }) => `Les types sont : ${paths.join(", ")}`,
  no_such_client: ({ path }) => `Le client de ce service est à ${path}.`,
  no_such_method: ({ allow, method }) => `Ce chemin accepte ${allow}, pas ${method}.`,
  no_proxy: () => "Ce service n’est pas un proxy.",
  form_not_accepted: ({ forms }) => `L’en-tête Accept exclut ${spoken(forms)}.`,

  no_instructor: ({ asked }) =>
    asked === "with_keys"
      ? "Aucune clé de moniteur n’est configurée : personne ne reçoit les corrigés."
      : "Aucune clé de moniteur n’est configurée : personne ne peut choisir de graine.",
  instructors_key_missing: ({ asked }) => `\`${asked}\` exige la clé du moniteur.`,
  instructors_key_wrong: () => "Ce n’est pas la clé du moniteur.",
};
