/** One question on a terminal. */
import { isCancel, settings, TextPrompt } from '@clack/core';
import { visible } from '../../units/clean.ts';
import type { Terminal } from '../io.ts';

export interface Prompt {
  readonly question: string;
  /** While typing. */
  readonly below: string;
  /** undefined when fine. */
  readonly check: (line: string) => string | undefined;
  /** Replaces `below` afterwards. */
  readonly after: () => string;
  readonly typing: (line: string) => void;
}

/** False after Ctrl-C, Ctrl-D or the end. */
export async function prompt(asked: Prompt, terminal: Terminal): Promise<boolean> {
  if (terminal.input.readableEnded) return false;
  settings.aliases.delete('escape');
  settings.aliases.set('\u0004', 'cancel');
  const ended = new AbortController();
  const stop = (): void => {
    ended.abort();
  };
  terminal.input.once('end', stop);
  const one: TextPrompt = new TextPrompt({
    ...terminal,
    signal: ended.signal,
    validate: (line = '') => {
      const fault = asked.check(line);
      // The fault tells what to type anew; Enter skips.
      if (fault !== undefined) one.userInput = '';
      return fault;
    },
    render() {
      return frame(asked, this);
    },
  });
  one.on('userInput', asked.typing);
  const line = await one.prompt();
  terminal.input.off('end', stop);
  return !isCancel(line);
}

type Shown = Pick<TextPrompt, 'state' | 'error' | 'userInput' | 'cursor'>;

function frame({ question, below, after }: Prompt, { state, error, userInput, cursor }: Shown): string {
  const isDone = state === 'submit' || state === 'cancel';
  const line = isDone ? visible(userInput) : withCursor(userInput, cursor);
  const rest = { error, submit: after(), cancel: '', initial: below, active: below, validating: below }[
    state
  ];
  return [question, `> ${line}`, ...(rest === '' ? [] : [rest])].join('\n');
}

/** Marks the cursor, since the terminal's own is hidden. */
function withCursor(text: string, at: number): string {
  const [under = ' '] = Array.from(text.slice(at));
  const rest = text.slice(at + under.length);
  return `${visible(text.slice(0, at))}\u001b[7m${visible(under)}\u001b[27m${visible(rest)}`;
}
