/** The keys of the saddle. */
import { blockOf, length, word } from '../key.ts';
import { trueFalse } from '../leaves.ts';
import { rigging, riggingKeys, riggingNames, riggingSense } from '../rigging.ts';

export const saddleKeys = {
  rigging: {
    read: rigging,
    always: true as const,
    keys: riggingKeys,
    open: 'full | 7/8 | 3/4 | 5/8 | center-fire | another fraction | { set-back: 2 in }',
    words: riggingNames,
    sense: riggingSense,
    labels: ['rigging', 'rig', 'position'],
    alone: /^\d+\/\d+$/,
  },
  style: word({
    about: 'style of rigging',
    words: ['ring', 'flat-plate', 'in-skirt', 'dropped'],
    sense: { inskirt: 'in-skirt', flatplate: 'flat-plate', plate: 'flat-plate', drop: 'dropped' },
    example: 'flat-plate',
    labels: ['rigging', 'rig'],
  }),
  'bar-span': length({
    about: 'bar span, fork center to cantle front',
    min: 6,
    max: 18,
    example: '13 in',
    note: 'fork center to cantle front',
    labels: ['bar span', 'bars'],
  }),
  'ring-to-ring': length({
    about: 'ring to ring under the groove',
    min: 18,
    max: 70,
    example: '44 in',
    note: 'under the groove, saddle and pad on',
    labels: ['ring to ring'],
  }),
  'ring-drop': length({
    about: 'spine to ring along the skin',
    min: 6,
    max: 24,
    example: '14 in',
    note: 'spine to ring along the skin',
    labels: ['drop', 'ring drop'],
  }),
  double: {
    read: trueFalse(
      'whether the saddle is double rigged',
      ': the ticket then has a keeper for the connecting strap; the front cinch is sized alone',
    ),
    example: 'false',
    note: 'true when there is a back cinch too: the ticket then has a keeper for the strap between',
    labels: [],
    words: [],
    sense: {
      double: 'true',
      'double-rig': 'true',
      'double-rigged': 'true',
      'double-rigging': 'true',
      single: 'false',
      'single-rig': 'false',
      'single-rigged': 'false',
      'single-rigging': 'false',
    },
  },
};

export const saddle = blockOf('the saddle', saddleKeys);
