/** The parser has no types. */
declare module 'svg-path-parser' {
  type Command =
    | { readonly code: 'M' | 'L'; readonly x: number; readonly y: number }
    | { readonly code: 'Z' | 'z' | 'H' | 'V' | 'C' | 'S' | 'Q' | 'T' | 'A' };
  export function parseSVG(path: string): Command[];
  export function makeAbsolute(commands: Command[]): Command[];
}
