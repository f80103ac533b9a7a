/** Whether the block can go into an order. */
import type { PhotoFile } from './block.ts';
import { fieldFault } from './fields.ts';
import { badFields, emptyFields } from './fields.ts';
import { readingsOf } from './readings.ts';
import { missing, type Picked } from './state.ts';

export interface Verdict {
  readonly ready: boolean;
  /** With the first reason. */
  readonly text: string;
}

/** Never ready when the order would refuse the block. */
export function verdictOf(now: Picked, photo: PhotoFile): Verdict {
  const no = (why: string): Verdict => ({ ready: false, text: `Not ready: ${why}` });
  const { doubts } = readingsOf(now, photo);
  const [first] = doubts;
  if (first?.refused === true) return no(first.text);
  const [wrong] = badFields(now).filter((field) => !emptyFields(now).includes(field));
  if (wrong !== undefined) return no(fieldFault(now.fields, wrong) ?? '');
  const lacking = [
    ...(emptyFields(now).length > 0 ? ['size of the measure'] : []),
    ...missing(now).map(({ name, gives }) => (gives === undefined ? name : `${name} (for ${gives})`)),
  ];
  if (lacking.length > 0) return no(`still needed: ${lacking.join(', ')}.`);
  if (first === undefined) return { ready: true, text: 'Complete: copy it to the order.' };
  return { ready: true, text: `Complete, but check: ${first.text}` };
}
