/** Whether this is `npm run prove`, where a test may take as long as it needs; `npm test` asks for its short form. */
export const isProof = process.env["PROVE"] === "on";
