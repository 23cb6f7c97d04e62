import { powers, round, unitsOf } from "./round.js";

const quote = 0x22;
const backslash = 0x5c;
const minus = 0x2d;
const point = 0x2e;
const zero = 0x30;
const firstPrintable = 0x20;
const firstBeyondAscii = 0x80;

/** From here a number of units has more digits than a double keeps apart. */
const exactUnits = 1e15;
/** With more decimals JSON may write an exponent. */
const plainDecimals = 6;
const stretch = 256 * 1024;
const smallWhole = 2 ** 31;
/** Sign, ten digits, point and six more. */
const longestNumber = 18;

/**
 * Writes JSON (RFC 8259) as UTF-8: the bytes of `JSON.stringify`, straight from numbers that have yet to be rounded. Finding
 * the shortest text of a double costs several times what writing a known count of digits does, and answers are mostly numbers.
 */
export class ByteWriter {
  #bytes = new Uint8Array(stretch);
  /** Where what is being written starts, and where it has come to. */
  #start = 0;
  #length = 0;

  /**
   * What was written. It shares a stretch of memory with what is written before and after, since asking for memory costs as
   * much as writing to it: who keeps it for long keeps a copy.
   */
  take(): Uint8Array {
    const taken = this.#bytes.subarray(this.#start, this.#length);
    this.#start = this.#length;
    return taken;
  }

  /** Forgets what was written. */
  drop(): void {
    this.#length = this.#start;
  }

  byte(value: number): void {
    this.#makeRoom(1);
    this.#bytes[this.#length++] = value;
  }

  /** Bytes as they are. */
  verbatim(bytes: Uint8Array): void {
    this.#makeRoom(bytes.length);
    this.#length = copy(bytes, this.#bytes, this.#length);
  }

  /** A number to its decimals, as `round` makes it. */
  rounded(value: number, decimals: number): void {
    const units = unitsOf(value, decimals);
    if (!(units < exactUnits) || decimals > plainDecimals) {
      this.number(round(value, decimals));
      return;
    }
    const power = powers[decimals] ?? 1;
    const whole = Math.floor(units / power);
    if (whole >= smallWhole) {
      this.number(round(value, decimals));
      return;
    }
    this.#makeRoom(longestNumber);
    let at = this.#length;
    if (value < 0 && units > 0) this.#bytes[at++] = minus;
    at = writeDigits(this.#bytes, at, whole);
    const fraction = units - whole * power;
    this.#length = fraction === 0 ? at : writeFraction(this.#bytes, at, fraction, power);
  }

  /** A finite number in full. */
  number(value: number): void {
    this.#ascii(String(value));
  }

  /** A text between quotes. */
  text(text: string): void {
    this.#makeRoom(text.length + 2);
    const start = this.#length;
    const target = this.#bytes;
    let at = start;
    target[at++] = quote;
    for (let i = 0; i < text.length; i += 1) {
      const code = text.charCodeAt(i);
      if (code < firstPrintable || code === quote || code === backslash || code >= firstBeyondAscii) {
        this.#utf8(JSON.stringify(text));
        return;
      }
      target[at++] = code;
    }
    target[at++] = quote;
    this.#length = at;
  }

  #ascii(text: string): void {
    this.#makeRoom(text.length);
    for (let i = 0; i < text.length; i += 1) this.#bytes[this.#length++] = text.charCodeAt(i);
  }

  #utf8(text: string): void {
    this.#makeRoom(4 * text.length);
    for (const character of text) {
      const code = character.codePointAt(0) ?? 0;
      if (code < 0x80) this.#bytes[this.#length++] = code;
      else {
        const following = code < 0x800 ? 1 : code < 0x10000 ? 2 : 3;
        const lead = [0, 0xc0, 0xe0, 0xf0][following] ?? 0;
        this.#bytes[this.#length++] = lead | (code >> (6 * following));
        for (let left = following - 1; left >= 0; left -= 1) {
          this.#bytes[this.#length++] = 0x80 | ((code >> (6 * left)) & 0x3f);
        }
      }
    }
  }

  #makeRoom(count: number): void {
    if (this.#length + count > this.#bytes.length) this.#moveOn(count);
  }

  /** To a new stretch, with what has been written of the current thing. */
  #moveOn(count: number): void {
    const begun = this.#bytes.subarray(this.#start, this.#length);
    this.#bytes = new Uint8Array(Math.max(stretch, 2 * (begun.length + count)));
    this.#bytes.set(begun);
    this.#start = 0;
    this.#length = begun.length;
  }
}

/** Short stretches are copied sooner by hand than by the library. @returns the place after them */
function copy(bytes: Uint8Array, target: Uint8Array, from: number): number {
  let at = from;
  for (let i = 0; i < bytes.length; i += 1) target[at++] = bytes[i] ?? 0;
  return at;
}

/** A whole number below 2^31. @returns the place after it */
function writeDigits(bytes: Uint8Array, from: number, value: number): number {
  let at = from;
  if (value < 10) {
    bytes[at++] = zero + value;
    return at;
  }
  let divisor = 1;
  while (divisor * 10 <= value) divisor *= 10;
  for (let rest = value | 0; divisor >= 1; divisor /= 10) {
    const digit = (rest / divisor) | 0;
    bytes[at++] = zero + digit;
    rest -= digit * divisor;
  }
  return at;
}

/** The four digits of each number below 10 000, and how many of them are left without the zeros at their end. */
const tableDigits = 4;
const tableSize = 10 ** tableDigits;
const digits = new Uint8Array(tableDigits * tableSize);
const significant = new Uint8Array(tableSize);
for (let n = 0; n < tableSize; n += 1) {
  const text = String(n).padStart(tableDigits, "0");
  for (let i = 0; i < tableDigits; i += 1) {
    digits[tableDigits * n + i] = text.charCodeAt(i);
    if (text[i] !== "0") significant[n] = i + 1;
  }
}

/** A point and the digits of units / power behind it, without the zeros at their end. @returns the place after them */
function writeFraction(bytes: Uint8Array, from: number, units: number, power: number): number {
  let at = from;
  bytes[at++] = point;
  if (power <= tableSize) return writeSignificant(bytes, at, units * (tableSize / power));
  // Up to eight digits, in two halves.
  const n = units * (tableSize ** 2 / power);
  const high = Math.floor(n / tableSize);
  const low = n - high * tableSize;
  if (low === 0) return writeSignificant(bytes, at, high);
  return writeSignificant(bytes, writeFirst(bytes, at, high, tableDigits), low);
}

/** The four digits of a number below 10 000 without the zeros at their end. @returns the place after them */
function writeSignificant(bytes: Uint8Array, from: number, n: number): number {
  return writeFirst(bytes, from, n, significant[n] ?? 0);
}

/** The first of those four digits. @returns the place after them */
function writeFirst(bytes: Uint8Array, from: number, n: number, count: number): number {
  for (let i = 0; i < count; i += 1) bytes[from + i] = digits[tableDigits * n + i] ?? zero;
  return from + count;
}
