/** The checksum of the journal's lines. */
import { createHash } from 'node:crypto';

/** Sixteen hexadecimal digits of SHA-256. */
export const digest = (text: string): string => createHash('sha256').update(text).digest('hex').slice(0, 16);
