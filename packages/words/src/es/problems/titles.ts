import type { ProblemCode, SceneProblemCode } from "@sunfathom/contract";

/** Las clases de problema que puede tener una escena, cada una en una frase. */
export const sceneProblemTitles: Readonly<Record<SceneProblemCode, string>> = {
  invalid_scene: "La escena no es válida.",
  model_version_mismatch: "La versión del modelo es otra.",
  outside_the_model: "La escena es válida, pero queda fuera de lo que el modelo puede responder.",
};

/** Cada clase de problema, en una frase. */
export const problemTitles = (): Readonly<Record<ProblemCode, string>> => ({
  ...sceneProblemTitles,
  invalid_request: "La petición no es válida.",
  invalid_query: "La cadena de consulta no es válida.",
  malformed_json: "El cuerpo no es JSON.",
  malformed_request: "La petición no es HTTP bien formado.",
  unauthorized: "Falta la clave del instructor o es incorrecta.",
  keys_not_offered: "Este servicio no da paquetes con soluciones.",
  marks_held_back: "El cuestionario aún no se ha cerrado.",
  not_found: "En esta ruta no hay nada.",
  method_not_allowed: "Esta ruta no admite este método.",
  not_acceptable: "La respuesta no existe en ninguna forma que usted admita.",
  request_timeout: "La petición no ha llegado a tiempo.",
  questions_changed: "Las preguntas han cambiado.",
  body_too_large: "El cuerpo es demasiado grande.",
  url_too_long: "La URL es demasiado larga.",
  unsupported_media_type: "El servicio no entiende este tipo de cuerpo.",
  paper_not_possible: "La petición es válida, pero no se puede hacer un cuestionario así.",
  responses_do_not_fit: "Las respuestas no corresponden al cuestionario.",
  token_refused: "El token no es de este servicio, o se ha alterado.",
  token_expired: "El token ha caducado.",
  headers_too_large: "Las cabeceras son demasiado grandes.",
  too_many_requests: "Ha pedido demasiado.",
  internal_error: "El servicio ha fallado.",
  unavailable: "El servicio no puede responder ahora.",
});
