/** How a backlog can be printed. */

export const backlogFormats = ['table', 'csv', 'json', 'ndjson', 'markdown'] as const;

export type BacklogFormat = (typeof backlogFormats)[number];
