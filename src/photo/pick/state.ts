/** What was clicked and typed, and how each action changes it. */
import type { Pixel } from '../../order/photo-types.ts';
import { badFields, type Fields } from './fields.ts';
import { isPoint, stepsFor, type PointId, type ReferenceKind, type Step, type StepId } from './landmarks.ts';

export type Points = Readonly<Partial<Record<PointId, Pixel>>>;

export interface Picked {
  readonly kind: ReferenceKind;
  readonly at: StepId;
  readonly points: Points;
  readonly skipped: readonly StepId[];
  readonly fields: Fields;
}

export interface Session {
  readonly now: Picked;
  readonly past: readonly Picked[];
  /** Subject of the last action; equal ones are undone together. */
  readonly last: string;
}

export type Act =
  | { readonly do: 'put'; readonly id: PointId; readonly at: Pixel; readonly run?: string }
  | { readonly do: 'remove'; readonly id: PointId }
  | { readonly do: 'go'; readonly to: StepId }
  | { readonly do: 'next' | 'back' | 'skip' }
  | { readonly do: 'undo' }
  | { readonly do: 'kind'; readonly kind: ReferenceKind }
  | { readonly do: 'type'; readonly field: keyof Fields; readonly text: string };

const most = 500;

/** Nothing clicked yet. */
export const begin: Session = {
  now: {
    kind: 'stick',
    at: 'measure',
    points: {},
    skipped: [],
    fields: {
      length: '',
      lengthUnit: 'in',
      width: '',
      height: '',
      sheetUnit: 'in',
      distance: '',
      distanceUnit: 'ft',
    },
  },
  past: [],
  last: '',
};

/** Returns the same session when nothing changes. */
export function act(session: Session, deed: Act): Session {
  if (deed.do === 'undo') return undone(session);
  const now = changed(session.now, deed);
  if (now === session.now) return session;
  const run = runOf(deed);
  const joins = run !== '' && run === session.last;
  const past = joins ? session.past : [...session.past, session.now].slice(-most);
  return { now, past, last: run };
}

/** What belongs together: a drag, nudges of one mark, letters of one field. */
function runOf(deed: Act): string {
  if (deed.do === 'put') return deed.run ?? '';
  return deed.do === 'type' ? `type ${deed.field}` : '';
}

function undone({ now, past }: Session): Session {
  return { now: past.at(-1) ?? now, past: past.slice(0, -1), last: '' };
}

function changed(now: Picked, deed: Exclude<Act, { do: 'undo' }>): Picked {
  switch (deed.do) {
    case 'put':
      return {
        ...now,
        points: { ...now.points, [deed.id]: deed.at },
        skipped: now.skipped.filter((id) => id !== deed.id),
      };
    case 'remove':
      return now.points[deed.id] === undefined ? now : { ...now, points: without(now.points, [deed.id]) };
    case 'go':
      return deed.to === now.at ? now : { ...now, at: deed.to };
    case 'kind':
      return deed.kind === now.kind ? now : { ...now, kind: deed.kind };
    case 'type':
      return { ...now, fields: { ...now.fields, [deed.field]: deed.text } };
    case 'next':
      return holdOf(now) === undefined ? { ...now, at: beside(now, 1) } : now;
    case 'back':
      return now.at === 'measure' ? now : { ...now, at: beside(now, -1) };
    case 'skip':
      return skipped(now);
  }
}

function skipped(now: Picked): Picked {
  const step = stepOf(now);
  if (step.optional === undefined) return now;
  const ids: StepId[] = step.id.startsWith('plumb') ? ['plumb-top', 'plumb-bottom'] : [step.id];
  const points = without(now.points, ids);
  const fields = step.id === 'distance' ? { ...now.fields, distance: '' } : now.fields;
  const rest = {
    ...now,
    points,
    fields,
    skipped: [...now.skipped.filter((id) => !ids.includes(id)), ...ids],
  };
  return { ...rest, at: beside({ ...rest, at: ids.at(-1) ?? now.at }, 1) };
}

const without = (points: Points, ids: readonly StepId[]): Points =>
  Object.fromEntries(Object.entries(points).filter(([id]) => !ids.includes(id as PointId)));

function beside(now: Picked, by: 1 | -1): StepId {
  const steps = stepsFor(now.kind);
  const at = steps.findIndex(({ id }) => id === now.at);
  return steps[Math.min(steps.length - 1, Math.max(0, at + by))]?.id ?? 'measure';
}

/** The current step. */
export const stepOf = (now: Picked): Step =>
  stepsFor(now.kind).find(({ id }) => id === now.at) ?? (stepsFor(now.kind)[0] as Step);

/** Marks the block still lacks. */
export const missing = (now: Picked): readonly Step[] =>
  stepsFor(now.kind).filter(({ id, optional }) => {
    if (!isPoint(id) || now.points[id] !== undefined) return false;
    // A plumb line has both ends or none.
    const half = id === 'plumb-top' ? 'plumb-bottom' : id === 'plumb-bottom' ? 'plumb-top' : undefined;
    return optional === undefined || (half !== undefined && now.points[half] !== undefined);
  });

/** Why Next is blocked, if it is. */
export function holdOf(now: Picked): string | undefined {
  const { at } = now;
  if (at === 'measure')
    return badFields(now).some((field) => field !== 'distance') ? 'Enter its size first.' : undefined;
  if (at === 'distance')
    return badFields(now).includes('distance') ? 'Fix the distance, or skip it.' : undefined;
  if (!missing(now).some(({ id }) => id === at)) return undefined;
  return stepOf(now).optional === undefined ? 'Click the mark first.' : 'Click the mark first, or skip it.';
}
