/** Places after the point that numbers of a page have, PDF units: less than a millionth of an inch. */
const places = 5;
const [steps, most] = [1e5, 2 ** 30];
const [zero, point, minus] = [0x30, 0x2e, 0x2d];

/** So much room has to be left before a number or the letters of an operator. */
const margin = 64;

const byRule = (value: number): string => {
  if (!Number.isFinite(value)) throw new RangeError(`PDF: expected a number, got ${value}`);
  return value.toFixed(places).replace(/0+$/, '');
};

/** The bytes of a page's content while it is written: ASCII, and numbers with at most 5 places. */
export class PageBytes {
  private bytes = new Uint8Array(0x10000);
  private at = 0;

  /** Begins anew. */
  clear(): void {
    this.at = 0;
  }

  /** All that was written, as it stands until more is. */
  written(): Uint8Array {
    return this.bytes.subarray(0, this.at);
  }

  private room(length: number): void {
    if (this.at + length <= this.bytes.length) return;
    const larger = new Uint8Array(Math.max(this.at + length, this.bytes.length * 2));
    larger.set(this.bytes);
    this.bytes = larger;
  }

  /** Plain letters, as they are. */
  text(letters: string): void {
    this.room(letters.length + margin);
    for (let n = 0; n < letters.length; n += 1) this.bytes[this.at++] = letters.charCodeAt(n);
  }

  /** Bytes that were made before. */
  copy(made: Uint8Array): void {
    this.room(made.length + margin);
    for (let n = 0; n < made.length; n += 1) this.bytes[this.at++] = made[n] ?? 0;
  }

  /** A number and a blank. Zeros at the end are left out, the point stays; refuses what is no number. */
  number(value: number): void {
    this.room(margin);
    const far = Math.abs(value) * steps;
    const low = Math.floor(far);
    // near the middle between two steps the product may be on the wrong side of it
    if (far < most && Math.abs(far - low - 0.5) > 1e-3) {
      if (value < 0) this.bytes[this.at++] = minus;
      this.step(far - low > 0.5 ? low + 1 : low);
    } else this.text(byRule(value));
    this.bytes[this.at++] = 0x20;
  }

  /** Takes the last blank back, or whatever the last byte is. */
  dropBlank(): void {
    this.at -= 1;
  }

  private step(count: number): void {
    const whole = Math.floor(count / steps);
    this.whole(whole);
    this.bytes[this.at++] = point;
    let rest = count - whole * steps;
    const first = this.at;
    for (let n = places - 1; n >= 0; n -= 1) {
      const shorter = Math.floor(rest / 10);
      this.bytes[first + n] = zero + rest - shorter * 10;
      rest = shorter;
    }
    let last = first + places;
    while (last > first && this.bytes[last - 1] === zero) last -= 1;
    this.at = last;
  }

  private whole(value: number): void {
    let digits = 1;
    for (let n = 10; n <= value; n *= 10) digits += 1;
    let rest = value;
    for (let n = digits - 1; n >= 0; n -= 1) {
      const shorter = Math.floor(rest / 10);
      this.bytes[this.at + n] = zero + rest - shorter * 10;
      rest = shorter;
    }
    this.at += digits;
  }
}
