import { powers, unitsOf } from "./round.js";

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
const smallWhole = 2 ** 31;

/**
 * Writes JSON (RFC 8259) as UTF-8: the bytes of `JSON.stringify`, straight from numbers that have yet to be rounded. Finding
 * the shortest text of a double costs several times what writing a known count of digits does, and answers are mostly numbers.
 */
export class ByteWriter {
  #bytes = new Uint8Array(32 * 1024);
  #length = 0;

  /** What was written, in memory of its own; the next thing starts afresh. */
  take(): Uint8Array {
    const taken = this.#bytes.slice(0, this.#length);
    this.#length = 0;
    return taken;
  }

  /** Forgets what was written. */
  drop(): void {
    this.#length = 0;
  }

  byte(value: number): void {
    this.#makeRoom(1);
    this.#bytes[this.#length++] = value;
  }

  /** Bytes as they are. */
  raw(bytes: Uint8Array): void {
    this.#makeRoom(bytes.length);
    const target = this.#bytes;
    let at = this.#length;
    for (let i = 0; i < bytes.length; i += 1) target[at++] = bytes[i] ?? 0;
    this.#length = at;
  }

  /** A number to its decimals, as `round` makes it. */
  rounded(value: number, decimals: number): void {
    const units = unitsOf(value, decimals);
    if (!(units < exactUnits) || decimals > plainDecimals) {
      this.number(
        units === Number.POSITIVE_INFINITY ? value : (value < 0 ? -units : units) / power(decimals),
      );
      return;
    }
    this.#makeRoom(32);
    if (value < 0 && units > 0) this.#bytes[this.#length++] = minus;
    const whole = Math.floor(units / power(decimals));
    this.#whole(whole);
    this.#fraction(units - whole * power(decimals), decimals);
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

  #whole(value: number): void {
    if (value >= smallWhole) {
      this.#ascii(String(value));
      return;
    }
    let divisor = 1;
    while (divisor * 10 <= value) divisor *= 10;
    for (let rest = value; divisor >= 1; divisor /= 10) {
      const digit = (rest / divisor) | 0;
      this.#bytes[this.#length++] = zero + digit;
      rest -= digit * divisor;
    }
  }

  /** The digits behind the point, without the zeros at their end; nothing where all are zero. */
  #fraction(units: number, decimals: number): void {
    let rest = units;
    if (rest === 0) return;
    this.#bytes[this.#length++] = point;
    for (let divisor = power(decimals - 1); rest > 0; divisor /= 10) {
      const digit = (rest / divisor) | 0;
      this.#bytes[this.#length++] = zero + digit;
      rest -= digit * divisor;
    }
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
    if (this.#length + count <= this.#bytes.length) return;
    const larger = new Uint8Array(2 * (this.#length + count));
    larger.set(this.#bytes.subarray(0, this.#length));
    this.#bytes = larger;
  }
}

function power(decimals: number): number {
  return powers[decimals] ?? Number.NaN;
}
