import type { ServiceDetails } from "../../problems/service-details.js";
import type { Texts } from "../../problems/texts.js";
import { spoken } from "../format.js";

/** Por qué el servicio rechaza una petición. */
export const serviceDetails: Texts<ServiceDetails, string> = {
  budget_spent: ({ cost, window_s, wait_s }) =>
    `Ha agotado su presupuesto de ${cost} en ${window_s} s. Inténtelo de nuevo dentro de ${wait_s} s.`,
  client_has_too_much_waiting: ({ wait_s }) =>
    `Ya tiene en espera tantos cálculos como se permiten a un cliente. Inténtelo de nuevo dentro de ${wait_s} s.`,
  service_has_too_much_waiting: ({ wait_s }) =>
    `El servicio está sobrecargado. Inténtelo de nuevo dentro de ${wait_s} s.`,
  answer_too_late: () => "La respuesta ha tardado demasiado.",
  thread_died: () => "El cálculo se ha interrumpido antes de terminar. Inténtelo de nuevo.",
  starting_or_stopping: () => "El servicio está arrancando o deteniéndose.",
  internal: () => "No se ha podido responder a la petición.",

  not_http: () => "La petición no se puede leer como HTTP.",
  request_too_late: () => "La petición no ha llegado a tiempo.",
  head_too_long: () => "La línea de petición y las cabeceras superan 16 kB.",
  too_many_headers: ({ most }) => `La petición tiene más de ${most} cabeceras.`,
  url_too_long: ({ most_characters }) => `La URL tiene más de ${most_characters} caracteres.`,
  bad_escape: () => "La ruta tiene una secuencia de escape que no se puede descodificar.",
  host_missing: () => "La petición no tiene cabecera Host.",
  host_repeated: () => "La petición tiene más de una cabecera Host.",
  other_expectation: () => "La cabecera Expect solo puede ser 100-continue.",
  body_of_other_length: () => "El cuerpo no mide lo que dice Content-Length.",
  not_understood: () => "No se entiende la petición.",

  body_too_long: ({ most }) => `El cuerpo supera ${most}.`,
  body_too_deep: ({ most }) => `Las listas y los objetos están anidados a más de ${most} niveles.`,
  body_not_declared_json: () => "El cuerpo no se declara como application/json.",
  body_not_declared: () => "El cuerpo no tiene Content-Type.",
  body_in_other_charset: () => "El cuerpo se declara en una codificación distinta de UTF-8.",
  body_encoded: () => "El cuerpo tiene una codificación de contenido. Envíelo sin ella.",
  body_empty: () => "El cuerpo está vacío.",
  body_not_utf8: () => "El cuerpo no es UTF-8.",
  body_not_json: () => "El cuerpo no se puede leer como JSON.",

  no_such_path: ({ near }) =>
    near === undefined ? "/openapi.json enumera todas las rutas." : `¿Quería decir ${near}?`,
  nothing_for_you: () => "En esta ruta no hay nada para usted.",
  no_such_problem: ({ paths }) => `Las clases son: ${paths.join(", ")}`,
  no_such_client: ({ path }) => `El cliente de este servicio está en ${path}.`,
  no_such_method: ({ allow, method }) => `Esta ruta admite ${allow}, no ${method}.`,
  no_proxy: () => "Este servicio no es un proxy.",
  form_not_accepted: ({ forms }) => `La cabecera Accept deja fuera ${spoken(forms)}.`,

  no_instructor: ({ asked }) =>
    asked === "with_keys"
      ? "No hay configurada ninguna clave de instructor, así que nadie recibe soluciones."
      : "No hay configurada ninguna clave de instructor, así que nadie puede fijar una semilla.",
  instructors_key_missing: ({ asked }) => `\`${asked}\` requiere la clave del instructor.`,
  instructors_key_wrong: () => "Esta no es la clave del instructor.",
};
