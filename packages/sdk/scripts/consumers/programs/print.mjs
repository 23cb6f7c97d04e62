import { digest } from "./digest.mjs";

const [baseUrl] = globalThis.Deno?.args ?? process.argv.slice(2);
console.log(await digest(baseUrl));
