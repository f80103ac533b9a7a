/** `schema`: the JSON Schema of order and shop files, for editors. */
import { Argument, type Command } from 'commander';
import { exit, type ExitCode } from '../fault.ts';
import type { CliIo } from '../io.ts';
import { word } from '../options.ts';
import type { Session } from '../program.ts';

const kinds = ['order', 'shop'] as const;
type Kind = (typeof kinds)[number];

const examples = `
  cinchwright schema order > order.schema.json`;

/** Adds the command. */
export function addSchema(program: Command, session: Session): void {
  program
    .command('schema')
    .summary('print the JSON Schema of an order file or the shop file')
    .description('Prints the JSON Schema of an order file or of the shop file, for editors.')
    .addArgument(new Argument('<kind>', kinds.join(' or ')).argParser(word('schema', kinds)))
    .addHelpText('after', examples)
    .action(async (kind: Kind) => {
      session.code = await printSchema(kind, session.io);
    });
}

async function printSchema(kind: Kind, io: CliIo): Promise<ExitCode> {
  const { orderJsonSchema, shopJsonSchema } = await import('../../order/json-schema.ts');
  const schema = kind === 'order' ? orderJsonSchema() : shopJsonSchema();
  io.stdout(`${JSON.stringify(schema, null, 2)}\n`);
  return exit.good;
}
