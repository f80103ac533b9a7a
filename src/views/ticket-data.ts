/** The bench ticket for scripts, lengths in inches. */
import { jsonText, rounded } from '../pages/json.ts';
import { inchesOfFeet } from '../units/feet.ts';
import type { PaperResult } from '../words/types.ts';
import { lengthBasis } from '../work/row.ts';
import type { Ticket } from '../work/ticket.ts';
import { paperValue, phraseValue, roundedValues } from './shared-values.ts';
import type { Values } from './table.ts';

/** `{ schema, results }`. */
export const ticketsJson = (results: readonly PaperResult<Ticket>[]): string =>
  jsonText({
    schema: 'cinchwright/ticket/1',
    results: results.map((result) => paperValue(result, ticketValue)),
  });

function ticketValue(ticket: Ticket): Values {
  const { buckle, lengths, flare, tolerances } = ticket;
  const { finished: length, ...onTheFrame } = lengths;
  return {
    horse: ticket.horse ?? null,
    day: ticket.day,
    due: ticket.due ?? null,
    quantity: ticket.quantity,
    lengthBasis: lengthBasis(ticket.measured),
    style: ticket.style,
    strands: ticket.strands,
    layers: ticket.layers,
    buckle: buckle.id,
    buckles: { metal: buckle.metal ?? null, near: 1, off: 1 },
    dees: ticket.dees.map(({ id, count }) => ({ id, count })),
    options: [...ticket.options],
    keeper: ticket.keeper,
    orderNotes: ticket.notes ?? null,
    latigoRun: { inches: rounded(ticket.run) },
    hours: ticket.hours ?? null,
    length: rounded(length),
    lengths: roundedValues(onTheFrame),
    half: rounded(ticket.half),
    flare: flare === undefined ? null : roundedValues({ ...flare }),
    profile: ticket.profile.map((each) => roundedValues({ ...each })),
    wovenBars: ticket.bars.map(({ kind, from, length, width, accent }) => ({
      kind,
      ...roundedValues({ at: from, length, width }),
      accent: accent ?? null,
    })),
    sections: ticket.sections.map(({ color, from, to, ...section }) => ({
      color: color ?? null,
      firstStrand: from,
      lastStrand: to,
      ...section,
    })),
    cuts: ticket.pieces.map(({ color, ply, strands, feet, tail }) => ({
      color: color ?? null,
      ply,
      strandNumbers: strands,
      length: inchesOfFeet(feet),
      tail: rounded(tail),
    })),
    accents: ticket.accents.map(({ color, feet }) => ({ color: color ?? null, length: inchesOfFeet(feet) })),
    tolerances: roundedValues({
      length: tolerances.length,
      width: tolerances.width,
      wovenBar: tolerances.bar,
    }),
    steps: ticket.steps.map(phraseValue),
    checks: ticket.checks.map(phraseValue),
    remarks: ticket.doubts.map(phraseValue),
    open: [...ticket.open],
    cautions: [...ticket.cautions],
  };
}
