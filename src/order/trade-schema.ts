/** The business half of a shop file; only put-ups are needed. */
import * as z from 'zod/mini';
import {
  block,
  day,
  freeText,
  jsonOf,
  listOf,
  oneOf,
  plainNumber,
  trueFalse,
  wholeNumber,
  type Leaf,
} from './leaves.ts';
import { measure, type LengthRange } from './measure.ts';
import { amount, currencyCode, exactNumber, percent } from './money-leaves.ts';

const maybe = z.optional;

/** A list of blocks. */
export function list<T extends z.ZodMiniType>(about: string, entry: T) {
  const schema = z.array(entry, `${about}, as a list`);
  jsonOf.set(schema, { description: about });
  return schema;
}

const onHand = (what: string): Leaf<number> =>
  wholeNumber({ min: 0, max: 9999, about: `how many ${what} are on hand` });
const leadDays = () => maybe(wholeNumber({ min: 0, max: 365, about: 'days until an order arrives' }));
const minutes = (about: string) => exactNumber({ min: 0, max: 600, about });
const factor = (about: string) => maybe(exactNumber({ min: 0.1, max: 10, about }));

/** Besides a buckle's size. */
export const hardwareShape = {
  metal: maybe(freeText('metal or finish')),
  'on-hand': onHand('buckles'),
  orderable: trueFalse('whether more can be ordered'),
  'lead-days': leadDays(),
  price: maybe(amount('price of one')),
};

const putUp = block('spools or hanks of one length', {
  lot: maybe(freeText('dye lot')),
  feet: plainNumber({ min: 1, max: 99_999, about: 'feet of cord on one spool or hank' }),
  count: wholeNumber({ min: 0, max: 9999, about: 'how many unopened spools or hanks are on hand' }),
  // Not a set: two remnants may have one length.
  opened: maybe(
    list(
      'feet left on opened spools or hanks',
      plainNumber({ min: 0, max: 99_999, about: 'feet left on one' }),
    ),
  ),
});

/** Besides a cord's color and ply. */
export const cordShape = {
  'put-ups': list('spools or hanks on hand (an empty list when there are none)', putUp),
  orderable: trueFalse('whether more can be ordered'),
  'lead-days': leadDays(),
  'price-a-foot': maybe(amount('price per foot of cord')),
  'price-a-pound': maybe(amount('price per pound of cord')),
  'feet-a-pound': maybe(exactNumber({ min: 1, max: 9999, about: 'feet of cord in a pound' })),
};

const deeWidth: LengthRange = { about: 'inside width of the dee', min: 0.5, max: 4, example: '1 1/2 in' };

const dee = block('a dee', {
  id: freeText('name of the dee, unique in the shop'),
  width: measure(deeWidth),
  metal: maybe(freeText('metal or finish')),
  'on-hand': onHand('dees'),
  orderable: trueFalse('whether more can be ordered'),
  'lead-days': leadDays(),
  price: maybe(amount('price of one')),
});

const labor = block('labor', {
  rate: maybe(amount('shop rate per hour')),
  'set-up-minutes': minutes('minutes to set up for an order, however many cinches it has'),
  'minutes-a-strand': minutes('minutes to string one strand'),
  'minutes-an-inch-of-bar': minutes('minutes to weave an inch of bar'),
  'by-style': maybe(
    block('how much longer each style takes', {
      straight: factor('factor for a straight'),
      'high-flare': factor('factor for a high flare'),
      'low-flare': factor('factor for a low flare'),
    }),
  ),
  'by-layers': maybe(
    block('how much longer layers take', {
      single: factor('factor for a single layer'),
      double: factor('factor for a double layer'),
    }),
  ),
});

const namedPercent = (about: string) => ({ name: freeText(`name of ${about}`), percent: percent(about) });

const option = block('an option', {
  name: freeText('name of the option, as orders write it'),
  price: maybe(amount('price of the option, without its dees')),
  dee: maybe(freeText('id of the dee it takes')),
  dees: maybe(wholeNumber({ min: 1, max: 12, about: 'how many dees' })),
});

const taxedWords = ['everything', 'materials', 'labor', 'options', 'rush'] as const;
const tax = block('a tax', {
  ...namedPercent('the tax'),
  on: listOf('what the tax is on', oneOf('what the tax is on', taxedWords)),
});

const weekdays = ['mon', 'tue', 'wed', 'thu', 'fri', 'sat', 'sun'] as const;
const slips = {
  monday: 'mon',
  tuesday: 'tue',
  wednesday: 'wed',
  thursday: 'thu',
  friday: 'fri',
  saturday: 'sat',
  sunday: 'sun',
} as const;

const bench = block('a bench', {
  name: freeText('name of the bench'),
  hours: exactNumber({ min: 0.5, max: 24, about: 'hours of work per day' }),
  days: listOf('days it works', oneOf('a day of the week', weekdays, slips)),
});

/** Keys at the top of the file. */
export const tradeShape = {
  currency: maybe(currencyCode()),
  dees: maybe(list('dees', dee)),
  labor: maybe(labor),
  consumables: maybe(
    list('consumables as a percent of materials', block('a consumable', namedPercent('the consumable'))),
  ),
  return: maybe(percent('markup on materials and consumables', 300)),
  options: maybe(list('options', option)),
  deposit: maybe(percent('deposit on the total')),
  rush: maybe(
    block('surcharge for orders that are due soon', {
      percent: percent('rush surcharge', 300),
      'within-days': wholeNumber({
        min: 0,
        max: 365,
        about: 'an order due within this many days of being taken is a rush',
      }),
    }),
  ),
  taxes: maybe(list('taxes (an empty list when there are none)', tax)),
  'quote-days': maybe(wholeNumber({ min: 1, max: 365, about: 'how many days a quote is good for' })),
  benches: maybe(list('benches', bench)),
  holidays: maybe(listOf('days off', day('a day off'))),
  'house-rules': maybe(listOf('lines printed on papers', freeText('a house rule'))),
};
