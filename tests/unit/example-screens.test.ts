/** Example orders: answers on line one, short texts for customers. */
import fs from 'node:fs';
import path from 'node:path';
import { describe, expect, test } from 'vitest';
import { shortCaution } from '../../src/numbers/cautions.ts';
import { columns } from '../../src/units/width.ts';
import { repo, run } from '../support/run-cli.ts';

const examples = fs
  .readdirSync(path.join(repo, 'examples', 'orders'))
  .filter((name) => /^\d\d-.*\.yaml$/.test(name));

/** One text per order. */
const screensOf = (text: string): string[] => text.trimEnd().split('\n\n\n');

describe.each(examples)('%s', (name) => {
  const file = `examples/orders/${name}`;

  test.each(['size', 'check'])(
    '%s: at most 24 lines of 80 columns, and the answer begins on the first',
    async (command) => {
      const { stdout } = await run([command, file]);
      if (command === 'check' && stdout.trim() === '') return;
      expect(stdout.trimEnd().endsWith(shortCaution)).toBe(true);
      for (const screen of screensOf(stdout)) {
        if (screen.includes('could not be read')) continue;
        const lines = screen.split('\n');
        expect(lines.length, screen).toBeLessThanOrEqual(24);
        expect(Math.max(...lines.map(columns)), screen).toBeLessThanOrEqual(80);
        expect(lines[0], screen).toMatch(
          command === 'size'
            ? /: (?:tie |DO NOT CUT|NOT SURE|TIE NOTHING|[A-Z]{3,} [A-Z]{2,})/
            : /: (?:Asked for|Current cinch|The cinch named|nothing to check|[A-Z]{3,} [A-Z]{2,})/,
        );
      }
    },
  );

  test('ask: the message to each customer has at most two questions and 120 words', async () => {
    const { stdout } = await run(['ask', file, '--format', 'text', '--draws', '8']);
    const messages = stdout.split(/^(?=Hi\b)/m).filter((text) => text.startsWith('Hi'));
    expect(messages.length > 0).toBe(stdout !== '');
    for (const message of messages) {
      expect(message.split(/\s+/).filter((word) => word !== '').length, message).toBeLessThanOrEqual(120);
      expect(message.match(/^\d\. /gm)?.length, message).toBeLessThanOrEqual(2);
      expect(message.replace(/\s+/g, ' '), message).toContain(shortCaution);
      expect(message.replace(/\s+/g, ' '), message).toMatch(/never reach under.*ask a vet/);
    }
  });
});
