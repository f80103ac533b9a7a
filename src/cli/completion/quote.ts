/** Words quoted for a shell. */

/** In single quotes, for bash and zsh. */
export const quoted = (text: string): string => `'${text.replaceAll("'", `'\\''`)}'`;

/** In single quotes, for fish. */
export const fishQuoted = (text: string): string =>
  `'${text.replaceAll('\\', '\\\\').replaceAll("'", "\\'")}'`;
