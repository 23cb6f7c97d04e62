/** Palabras que comparten muchas preguntas. */
import type { QuizTemplateId } from "../../quiz/templates.js";
import { spoken } from "../format.js";
import { titles } from "./titles.js";
import { unitName } from "./units.js";

/** «3 mm, 5 mm y 7 mm» */
export const list = (parts: readonly string[]): string => spoken(parts);

/** Para partes que llevan comas. */
export const series = (parts: readonly string[]): string => parts.join("; ");

const WATERS = {
  IB: "agua oceánica azul y clara (tipo Jerlov IB)",
  II: "agua oceánica azul (tipo Jerlov II)",
  "1C": "agua costera clara (tipo Jerlov 1C)",
  "3C": "agua costera verde (tipo Jerlov 3C)",
  "5C": "agua costera verde y turbia (tipo Jerlov 5C)",
  "7C": "agua costera muy turbia (tipo Jerlov 7C)",
};

const DECIMALS = ["con un número entero", "con un decimal", "con dos decimales", "con tres decimales"];

export const common = {
  water: WATERS,
  scene: (p: { water: string; sun: string }) =>
    `Bucea en ${p.water}. El sol está ${p.sun} sobre el horizonte y el cielo está despejado.`,
  unit: unitName,
  /** El nombre de una plantilla, como título de sus preguntas. */
  title: (p: { template: string }): string =>
    Object.hasOwn(titles, p.template) ? titles[p.template as QuizTemplateId] : p.template,
  /** Detrás del enunciado de una pregunta numérica. */
  answerIn: (p: { unit: string; decimals: number }) =>
    `Responda${p.unit === "" ? "" : ` en ${unitName(p.unit)},`} ${DECIMALS[p.decimals] ?? `con ${p.decimals} decimales`}.`,
  chooseAll: "Elija todas las respuestas correctas.",
  sources: (p: { sources: string[] }) => `Fuentes: ${series(p.sources)}.`,
  right: "Correcto.",
  wrongNumber: "No es eso.",
  partlyRight: "No todo es correcto.",
  blank: "Ha dejado esta pregunta en blanco.",
  missed: "Esta también es correcta.",
};

/** Fuentes: las que no forman parte del modelo y las del modelo que las preguntas citan. */
export const citations = {
  density: "Densidad, transmitancia y pasos: por definición (ISO 5-2; un paso es un factor de dos)",
  iso_speed: "ISO 12232: con el doble de sensibilidad ISO basta la mitad de exposición",
  f_number: "ISO 517: la luz que deja pasar un objetivo varía con el cuadrado del número f",
  mired: "Grado microrrecíproco: 1 000 000 dividido entre la temperatura de color en kelvin, por definición",
  inverse_square: "Ley de la inversa del cuadrado, para una luz pequeña frente a su distancia",
  snell: "Ley de Snell, índice de refracción del agua de mar 1,34 (Quan & Fry 1995, Applied Optics 34, 3477)",
  mean_sensor:
    "Canales de color de una cámara: media de 11 cámaras publicadas por la Academy of Motion Picture Arts and Sciences",
  light_field:
    "Luz del día a profundidad: refracción en la superficie, ley de Gershun, trazado de fotones con la función de fase de Fournier & Jonasz 1999",
  path_attenuation: "Trayectos cortos por el agua: absorción y la mitad de la dispersión, una suposición",
  filter_shapes:
    "Filtros: curvas típicas de filtros de color, una suposición, porque ninguna norma publica ninguna",
  filter_merit:
    "Error de color de una carta de 24 campos tras balance de blancos, exposición y corrección de color (CIEDE2000)",
  camera_recording: "ISO 12232 para la exposición; ruido del sensor de una cámara típica, una suposición",
  vignetting: "Geometría de aberturas redondas",
  rear_sheet:
    "Desplazamiento del foco por una lámina plana: (1 - 1/n) de su grosor, una fórmula de manual de óptica",
  lens_formula: "Fórmula de la lente para motivos lejanos, cualquier manual de óptica",
  shutter_angle:
    "Ángulo de obturación: la parte de 360° del tiempo de un fotograma en que el obturador está abierto, por definición",
  rec_709: "ITU-R BT.709: señal en función de la luz",
  code_values:
    "Valores de código: dos elevado al número de bits, por definición; un paso es un factor de dos de luz",
  lit_haze: "Backscatter de los focos de vídeo: dispersión simple a lo largo de la línea de visión",
  common_practice: "Práctica habitual del oficio, sin fuente publicada",
};

/** Lo mismo, de fuentes del modelo cuyo texto no es solo una referencia bibliográfica. */
export const modelCitations: Readonly<Record<string, string>> = {
  jerlov_1976: "Jerlov 1976, Marine Optics, 2.ª edición, Elsevier, tabla XXVII",
  pope_fry_1997:
    "Pope & Fry 1997, Applied Optics 36, 8710; más allá de 727,5 nm, Röttgers et al. 2016, Water Optical Properties Processor v3; dispersión del agua de mar, Zhang, Hu & He 2009, Optics Express 17, 5698",
  kirk_1984: "Kirk 1984, Limnology and Oceanography 29, 350",
  bird_riordan_1986: "Bird & Riordan 1986, SERI/TR-215-2436; masa de aire, Kasten & Young 1989",
  bottom_reflectance:
    "Medias de espectros tomados en el agua por G. Asner (arena, coral, algas) y, de praderas marinas en el aire, por Schnalzger 2017, según una biblioteca bioóptica abierta, DOI 10.5281/zenodo.10246861",
  cie_1931_observer: "CIE 15; ISO/CIE 11664-1",
  cie_led_illuminants: "CIE 15:2018, tabla 12; mezclados de forma lineal en mired entre 2733 y 6598 K",
  ciede2000: "ISO/CIE 11664-6; Sharma, Wu & Dalal 2005, Color Research and Application 30, 21",
  mounting_practice: "Práctica habitual del oficio, sin fuente publicada",
};
