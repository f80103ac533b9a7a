/** Help for the counter: purpose, options, examples. */
import type { Command, Help, Option } from 'commander';
import { shortCaution } from '../numbers/cautions.ts';

/** Every command has these. */
const everywhere = '--force (write over any file), --no-color, -h (--help), -v (--version)';

/** They share a line where a command has all. */
const together = [
  {
    longs: ['--spec', '--style', '--strands'],
    line: '--spec <rank>, --style <name>, --strands <n>: tie this one, not our pick',
  },
  {
    longs: ['--units', '--paper'],
    line: '--units in or cm (JSON and CSV stay in inches), --paper letter or a4 (PDF)',
  },
];

const isShared = ({ long }: Option): boolean =>
  ['--force', '--no-color', '--help', '--version'].includes(long ?? '');

/** Leaves out what `addHelpText` adds. */
export function helpText(command: Command, helper: Help): string {
  const width = helper.helpWidth ?? 80;
  const all = helper.visibleOptions(command).filter((option) => !isShared(option));
  const joined = together.filter(({ longs }) =>
    longs.every((long) => all.some((each) => each.long === long)),
  );
  const options = all.filter(({ long }) => !joined.some(({ longs }) => longs.includes(long ?? '')));
  const commands = helper.visibleCommands(command);
  const rows = [
    ...commands.map((each) => [each.name(), each.summary() || each.description()]),
    ...options.map((option) => [option.flags, option.description]),
  ];
  const column = Math.min(24, Math.max(0, ...rows.map(([term = '']) => term.length)) + 2);
  const line = ([term = '', text = '']: readonly string[]): string => {
    const start = `  ${term.padEnd(column)}`;
    return helper
      .boxWrap(text, width - column - 2)
      .split('\n')
      .map((part, i) => (i === 0 ? start + part : ' '.repeat(column + 2) + part))
      .join('\n');
  };
  return [
    `Usage: ${helper.commandUsage(command)}`,
    helper.boxWrap(helper.commandDescription(command), width),
    '',
    ...rows.map(line),
    ...joined.map((each) => `  ${each.line}`),
    `  ${everywhere}`,
    '',
  ].join('\n');
}

/** For newcomers. */
export const shortHelp = `cinchwright sizes mohair western cinches from order files.
  new        start an order: cinchwright new order.yaml
  size       which cinch to tie, and why: cinchwright size order.yaml
  check      judge the current cinch, or the one asked for
  ask        what to ask the customer, ready to send
  quote      the price, or the invoice, for the customer
  photo      measure from a side photo
  draw       picture to scale, on the horse or flat
  ticket     bench ticket, for the maker; care card
  materials  cord and hardware to pull, buy and cut
  schedule   who ties what, when, and what runs late
  backlog    size a whole folder, one row per order
  learn      what past cinches tell us
  rules      what each check looks at
  help       help on any command: cinchwright help size
Also: schema, completion. Exit codes and options: cinchwright --help
${shortCaution}
`;
