/** Turns an offset into line and column, both from 1. */

export class Lines {
  readonly #starts: number[] = [0];
  readonly #text: string;
  readonly #before: number;

  /** @param before lines above the text */
  constructor(text: string, before = 0) {
    this.#text = text;
    this.#before = before;
    for (let at = text.indexOf('\n'); at !== -1; at = text.indexOf('\n', at + 1)) this.#starts.push(at + 1);
  }

  /** Columns count characters; an emoji is one. */
  at(offset: number): { line: number; column: number } {
    let low = 0;
    let high = this.#starts.length - 1;
    while (low < high) {
      const middle = Math.ceil((low + high) / 2);
      if ((this.#starts[middle] ?? 0) <= offset) low = middle;
      else high = middle - 1;
    }
    const before = this.#text.slice(this.#starts[low], offset);
    // A million-character line needs no exact count.
    const column = (before.length > 5000 ? before.length : Array.from(before).length) + 1;
    return { line: this.#before + low + 1, column };
  }

  textAt(offset: number): string {
    const start = this.#starts[this.at(offset).line - this.#before - 1] ?? 0;
    const end = this.#text.indexOf('\n', start);
    return this.#text.slice(start, Math.min(end === -1 ? this.#text.length : end, start + 200)).trim();
  }
}
