// Writes openapi/openapi.json from the routes. Run by `npm run generate`.
import { writeFileSync } from "node:fs";
import { createApp } from "../app.js";
import { descriptionText } from "./text.js";

const app = await createApp();
await app.ready();
const file = new URL("../../../../openapi/openapi.json", import.meta.url);
writeFileSync(file, descriptionText(app));
await app.close();
console.log(`Wrote ${file.pathname}`);
