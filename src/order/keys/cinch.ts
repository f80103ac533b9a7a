/** The keys of a wanted or current cinch. */
import { length, word } from '../key.ts';
import { freeText, strandCount } from '../leaves.ts';

export const cinchKeys = {
  style: word({
    about: 'style of cinch',
    words: ['straight', 'high-flare', 'low-flare'],
    example: 'straight',
    sense: {
      roper: ['high-flare', 'low-flare'],
      flare: ['high-flare', 'low-flare'],
      flared: ['high-flare', 'low-flare'],
    },
  }),
  strands: { read: strandCount('strands'), example: '17' },
  buckle: { read: freeText('id of a buckle in the shop file'), example: 'plain 3 1/2' },
  length: length({ about: 'cinch length, buckle to buckle', min: 16, max: 44, example: '32 in' }),
};
