/** The care card: how a cinch goes on, is checked, washed and retired. */
import { under, type Sheet } from '../pages/sheet.ts';
import { dayText } from '../units/days.ts';
import { phraseText, quantityText, type Units } from '../units/text.ts';
import { aCinch } from '../words/counter-words.ts';
import type { Ticket } from '../work/ticket.ts';

/** [common practice throughout, no source; the stretch is the model's] */
export function careSheet(ticket: Ticket, units: Units): Sheet {
  const { order, horse, shop, day, doubts, cautions, quantity } = ticket;
  const many = quantity === 1 ? 'your mohair cinch' : `your ${String(quantity)} mohair cinches`;
  const parts: Readonly<Record<string, readonly string[]>> = {
    'How it goes on': onLines(ticket),
    'The first rides': firstLines(ticket, units),
    'Look and feel, every ride': everyRide,
    Washing: washing,
    'When to retire it': retire,
  };
  return {
    title: `Care of ${many}`,
    shop,
    about: [
      `Order ${order}${horse === undefined ? '' : ` for ${horse}`}, ${dayText(day)}: ${aCinch(ticket)}.`,
      'All of this is common practice in the trade, not a tested standard. Your vet and your saddle maker come first.',
    ],
    notice: undefined,
    blocks: [
      ...doubts.map((doubt) => ({ kind: 'text', text: phraseText(doubt, units), tone: 'strong' }) as const),
      ...Object.entries(parts).flatMap(([head, items]) => under(head, [{ kind: 'list', items }])),
    ],
    rules: [],
    cautions,
  };
}

const onLines = ({ keeper, dees }: Ticket): string[] => [
  'The smooth side lies on the horse; the sewn-in tails and knots lie away from it.',
  'Every strand lies flat, none over another. The middle bar sits midway between the front legs, both buckles at one height.',
  'Run a flat hand down between cinch and horse: the hair lies flat, and no skin is pinched.',
  ...(dees.length > 0 ? ['The dees hang down, on the side away from the horse.'] : []),
  ...(keeper ? ['Double rigged: the connecting strap runs through the keeper in the middle.'] : []),
];

const firstLines = ({ lengths }: Ticket, units: Units): string[] => [
  `New mohair stretches, about ${quantityText({ value: lengths.stretch, as: 'length' }, units)} here; its length allows for that. Expect to take up latigo.`,
  'Tighten in stages: snug it, lead the horse a few steps, take up, and only then mount.',
  'Check again after ten minutes and at every stop. Keep the first rides short, and look under it after each.',
];

const everyRide = [
  'Strands: mud, burrs, hard or sharp places; wear and cuts, especially where they turn around the buckles.',
  'Woven bars and tails: nothing loose. Buckles: no bend, rust or rough edge, tongues straight.',
  'Latigo, off billet and rings: no crack, no torn hole, no worn stitch.',
  'The horse: no rub, swelling, sore or missing hair behind the elbows, under the buckles or on the chest.',
  'Cinched up, lift each front leg forward: no strand or buckle touches the elbow.',
];

const washing = [
  'Let mud dry, knock it out, and brush along the strands with a soft brush.',
  'Wash by hand in cool water with a little mild soap; rinse until it runs clear. No hot water, bleach or softener, and no machine: heat and rubbing felt mohair.',
  'Press the water out, never wring. Dry it flat or hung by both buckles, in the shade and away from heaters; put it away dry.',
  'Wash it before it goes on another horse: skin trouble travels with it.',
];

const retire = [
  'Stop riding on it, and show it to us, at one strand worn through or cut, cords thinned at a buckle, a bar or tail that pulls loose, or a bent, cracked or rusted buckle.',
  'Retire it when it stays stiff and matted after washing, or has grown so long that the buckles come near the rings.',
  'There is no fixed age: wear decides. When in doubt, do not ride on it.',
];
