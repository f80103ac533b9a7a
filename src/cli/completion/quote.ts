/** Words quoted for a shell. */

/** In single quotes, as bash and zsh read them. */
export const quoted = (text: string): string => `'${text.replaceAll("'", `'\\''`)}'`;

/** In single quotes, as fish reads them. */
export const fishQuoted = (text: string): string =>
  `'${text.replaceAll('\\', '\\\\').replaceAll("'", "\\'")}'`;
