const UNITS: Readonly<Record<string, string>> = { stops: "pasos" };

/** La unidad de una respuesta, tal como se lee. */
export const unitName = (code: string): string => UNITS[code] ?? code;
