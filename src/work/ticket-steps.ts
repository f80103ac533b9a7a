/** Steps at the bench, and checks before a cinch leaves it. */
import { styles } from '../cinch/styles.ts';
import { allOf, count, len, say, type Phrase } from '../units/phrase.ts';
import type { Ticket } from './ticket.ts';

type Drawn = Omit<Ticket, 'steps' | 'checks'>;

/** [common practice, no source] */
export function stepsFor(ticket: Drawn): Phrase[] {
  const { lengths, buckle, strands, layers, pieces, style, flare, dees, options, quantity, keeper } = ticket;
  const all = quantity === 1 ? '' : ` for ${allOf(quantity)}`;
  const each = quantity === 1 ? '' : ' for each cinch';
  const measured = ticket.measured
    ? []
    : [say`Tape ring to ring under the girth groove, saddle and pad on, and print a new ticket.`];
  const string =
    layers === 2
      ? say`String ${count(strands)} strands double, every other one on top, even tension.`
      : say`String ${count(strands)} strands single, even tension.`;
  return [
    ...measured,
    say`Pull ${count(2 * quantity)} ${buckle.id} buckles${all}; check bars, tongues and welds.`,
    say`Cut ${count(pieces.length)} ${pieces.length === 1 ? 'piece' : 'pieces'} of body cord${each} by the cut list, one dye lot per color.`,
    say`Set the frame: ${len(lengths.frame)} outside to outside of the buckles, ${len(lengths.frameBars)} between buckle bars.`,
    string,
    ...(flare === undefined
      ? [say`Weave the end bars, then the center bar.`]
      : [
          say`Weave the rows of the ${styles[style].name} from the buckle down, both halves, drawn in; the flare starts ${len(flare.start)} from the buckle.`,
          say`Let the strands flare out over ${len(flare.whole - flare.start)}, then weave the center bar at full width.`,
        ]),
    ...dees.map(
      ({ id, count: many, option }) =>
        say`For ${option}, sew in ${count(many)} x ${id} at the center bar${each}.`,
    ),
    ...(keeper ? [say`Double rigged: sew a keeper for the connecting strap in the middle.`] : []),
    ...options
      .filter((name) => !dees.some(({ option }) => option === name))
      .map((name) => say`Option: ${name}.`),
    say`Sew each tail back through its own strands and whip the ends.`,
    say`Off the frame: rest it an hour, then measure flat under light hand tension.`,
  ];
}

/** Checks with their tolerances. */
export function checksFor({ lengths, tolerances, bars, sections, profile, barInches }: Drawn): Phrase[] {
  const [first] = bars;
  const last = profile.at(-1);
  return [
    say`Finished length ${len(lengths.finished)}, give or take ${len(tolerances.length)}, outside to outside of the hardware.`,
    say`Width ${len(first?.width ?? 0)} at the end bars and ${len(last?.width ?? 0)} in the middle, give or take ${len(tolerances.width)}.`,
    say`Bars in place, give or take ${len(tolerances.bar)}: ${count(2 * bars.length - 1)} of them, ${len(barInches)} together.`,
    say`${count(sections.length)} ${sections.length === 1 ? 'tail' : 'tails'} at each buckle, sewn back and whipped.`,
    say`No strand slack or proud, both buckles square, nothing sharp on the side against the horse.`,
  ];
}
