import type { FieldText, Texts } from "../../problems/texts.js";
import type { QuizRefusals } from "../../quiz/refusals.js";
import { unitName } from "./units.js";

/** Por qué el cuestionario rechaza una petición. */
export const quizRefusals: Texts<QuizRefusals, FieldText> = {
  count_out_of_range: ({ most }) => ({
    message: `Un cuestionario tiene de 1 a ${most} preguntas.`,
    allowed: `un número entero, de 1 a ${most}`,
  }),
  template_unknown: ({ template }) => ({
    message: `No existe la plantilla ${JSON.stringify(template)}.`,
    allowed: "una clase de pregunta que figure en la descripción",
  }),
  template_not_at_level: ({ template, levels }) => ({
    message: `${template} es solo para estos niveles: ${levels.join(", ")}.`,
    allowed: "clases de pregunta que tenga este nivel",
  }),
  too_few_questions: ({ found }) => ({
    message: `En este nivel, estas plantillas solo tienen ${found} ${found === 1 ? "pregunta" : "preguntas"} más. Pida menos, o más plantillas o temas.`,
    allowed: "menos preguntas, o más clases de pregunta, o todas, sin `templates`",
  }),
  response_malformed: (p) => ({
    message: malformed(p),
    allowed: "una respuesta por pregunta, en la forma que admite su interacción y con los ids que tiene",
  }),
  item_unknown: ({ item }) => ({
    message: `El cuestionario no tiene ninguna pregunta ${JSON.stringify(item)}.`,
    allowed: "ids de preguntas del cuestionario",
  }),
  token_malformed: () => ofToken("Este no es un token de este servicio."),
  token_key_unknown: () => ofToken("La clave de este token no está en uso, o ya no lo está."),
  token_refused: () => ofToken("Este token se ha alterado o se selló con otra clave."),
  token_expired: ({ expired_at }) => ({
    message: `Este token caducó el ${expired_at}.`,
    allowed: "un token que no haya caducado",
  }),
  questions_changed: ({ model_version }) => ({
    message: `Las preguntas se hicieron con la versión ${model_version} del modelo, y hoy saldrían de otra manera. Pida un cuestionario nuevo.`,
    allowed: "un token de un cuestionario hecho hoy",
  }),
  closes_at_missing: () => ({
    message: "Un cuestionario con release after_close necesita una hora de cierre.",
    allowed: "la hora a la que se cierra el cuestionario (RFC 3339)",
  }),
  closes_at_without_effect: () => ({
    message: "Solo un cuestionario con release after_close tiene una hora de cierre.",
    allowed: "ningún `closes_at`, o con él `release` `after_close`",
  }),
  closes_at_out_of_range: ({ case: what, most_days }) => ({
    message: {
      past: "El cuestionario ya estaría cerrado.",
      no_such_day: "El mes no tiene ese día.",
      too_far_ahead: `Un cuestionario puede seguir abierto ${most_days} días como máximo.`,
    }[what],
    allowed: `una hora futura, como máximo a ${most_days} días vista`,
  }),
  release_without_effect: () => ({
    message: "Un paquete con soluciones se las enseña a cualquiera que lo tenga.",
    allowed: "un paquete sin soluciones, o ni `release` ni `closes_at`",
  }),
  version_without_effect: () => ({
    message: "Solo un paquete con `format` `qti` tiene una versión de ese estándar.",
    allowed: "ningún `version`, o `format` `qti`",
  }),
  practice_needs_keys: () => ({
    message:
      "Un paquete de práctica corrige las respuestas por sí mismo y por eso lleva las soluciones: permítalo con `with_keys` `true`.",
    allowed: "solo `true`, que necesita la clave del instructor",
  }),
  not_closed_yet: ({ closes_at }) => ({
    message: `Las respuestas corresponden al cuestionario. Se cierra el ${closes_at}: envíelas otra vez entonces, porque el servicio no guarda nada.`,
    allowed: "respuestas a un cuestionario ya cerrado, o la clave del instructor",
  }),
};

const ofToken = (message: string): FieldText => ({
  message,
  allowed: "un token tal como el servicio lo dio con el cuestionario",
});

function malformed(p: QuizRefusals["response_malformed"]): string {
  switch (p.case) {
    case "other_field":
      return `Esta pregunta se responde con ${p.field}, no con ${p.other}.`;
    case "no_such_entry":
      return `Esta pregunta no tiene ninguna opción ${JSON.stringify(p.entry)}.`;
    case "entry_repeated":
      return "Puede nombrar cada opción una sola vez.";
    case "too_many_chosen":
      return `Aquí puede elegir ${p.most} como máximo.`;
    case "not_a_number":
      return "La respuesta tiene que ser un número finito.";
    case "number_ambiguous":
      return `${JSON.stringify(p.typed)} puede significar dos números. Escriba los millares sin separador, y no ponga exactamente tres decimales.`;
    case "other_unit":
      return p.unit === ""
        ? `${JSON.stringify(p.typed)} lleva unidad, pero la pregunta pide un número solo.`
        : `${JSON.stringify(p.typed)} lleva otra unidad: responda en ${unitName(p.unit)}, o sin unidad.`;
    case "order_incomplete":
      return "Ponga todas las opciones en el orden.";
    case "answered_twice":
      return `Ha respondido dos veces a la pregunta ${p.item}.`;
  }
}
