/** Marks on the wrong side of each other. */
import type { Pixel } from '../order/photo-types.ts';
import { doubtful, refused, type Doubt } from './doubt.ts';
import type { Points } from './state.ts';

/** Above and below, ahead and behind. */
export function orderDoubts(points: Points): Doubt[] {
  const { ring, elbow, 'girth-groove': groove, spine, underline } = points;
  const doubts: Doubt[] = [];
  const above = (high: Pixel | undefined, low: Pixel | undefined, told: string): void => {
    if (high !== undefined && low !== undefined && high[1] >= low[1]) doubts.push(refused(told));
  };
  above(spine, underline, 'The top line must be above the underline: are the two swapped?');
  // Everything lies between these two: one report is enough.
  if (doubts.length > 0) return doubts;
  above(spine, ring, 'The ring is above the top line of the back: check both.');
  above(ring, underline, 'The ring is below the underline: check both.');
  above(ring, groove, 'The ring is below the girth groove: check both.');
  above(spine, groove, 'The girth groove is above the top line: it belongs on the underline.');
  above(spine, elbow, 'The elbow is above the top line of the back: check both.');
  if (elbow === undefined || groove === undefined) return doubts;
  return [...doubts, ...facingDoubts(points, elbow, groove)];
}

function facingDoubts({ fork, cantle }: Points, elbow: Pixel, groove: Pixel): Doubt[] {
  const facing = Math.sign(elbow[0] - groove[0]);
  if (facing === 0)
    return [refused('The elbow is straight above the girth groove, not ahead of it. Check both.')];
  const way = facing > 0 ? 'right' : 'left';
  const swapped = `By elbow and girth groove the horse faces ${way}: are two marks swapped?`;
  const front = fork ?? elbow;
  return cantle !== undefined && (front[0] - cantle[0]) * facing <= 0 ? [refused(swapped)] : [];
}

/** Marks in each other's place. */
export function swapDoubts({ ring, elbow, 'girth-groove': groove, spine, underline }: Points): Doubt[] {
  const doubts: Doubt[] = [];
  if (ring !== undefined && elbow !== undefined && ring[1] > elbow[1])
    doubts.push(doubtful('The ring is lower than the elbow: are the two swapped?'));
  if (elbow === undefined || groove === undefined || spine === undefined || underline === undefined)
    return doubts;
  const nearElbow = ([x]: Pixel): boolean => Math.abs(x - elbow[0]) < Math.abs(x - groove[0]);
  if (nearElbow(spine) && nearElbow(underline))
    doubts.push(
      doubtful(
        'Top line and underline are marked at the elbow, not at the girth groove: are elbow and groove swapped?',
      ),
    );
  return doubts;
}
