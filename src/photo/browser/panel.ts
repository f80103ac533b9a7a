/** The words beside the photo: step, inputs, measurements, list, block. */
import { blockOf } from '../pick/block.ts';
import { badFields, emptyFields, fieldFault, type Fields } from '../pick/fields.ts';
import { isPoint, stepsFor } from '../pick/landmarks.ts';
import { readingsOf } from '../pick/readings.ts';
import { holdOf, stepOf, type Picked } from '../pick/state.ts';
import { verdictOf } from '../pick/verdict.ts';
import type { Desk } from './desk.ts';
import { byId, made } from './elements.ts';

/** Writes them all anew. */
export function showPanel(desk: Desk): void {
  const { now, past } = desk.session;
  showStep(now);
  showFields(now);
  showList(desk);
  showReadings(desk);
  const verdict = verdictOf(now, desk.photo);
  say('lacking', verdict.text);
  byId('lacking', HTMLElement).classList.toggle('no', !verdict.ready);
  const block = byId('block', HTMLTextAreaElement);
  const text = blockOf(now, desk.photo);
  if (block.value !== text) {
    block.value = text;
    say('copied', '');
  }
  byId('undo', HTMLButtonElement).disabled = past.length === 0;
  byId('back', HTMLButtonElement).disabled = now.at === 'measure';
  const hold = holdOf(now);
  say('hold', hold ?? '');
  byId('next', HTMLButtonElement).disabled = now.at === 'done' || hold !== undefined;
  byId('skip', HTMLButtonElement).hidden = stepOf(now).optional === undefined;
  byId('copy', HTMLButtonElement).disabled = !verdict.ready;
  byId('download', HTMLButtonElement).disabled = !verdict.ready;
}

/** Only when changed: screen readers repeat what is written. */
function say(id: string, text: string): void {
  const element = byId(id, HTMLElement);
  if (element.textContent !== text) element.textContent = text;
}

function showStep(now: Picked): void {
  const steps = stepsFor(now.kind);
  const step = stepOf(now);
  const optional =
    step.optional === undefined
      ? step.gives === undefined
        ? ''
        : `, needed for ${step.gives}`
      : ', only helps: may be skipped';
  say('count', `Step ${String(steps.indexOf(step) + 1)} of ${String(steps.length)}${optional}`);
  say('title', step.title);
  say('text', step.text);
  for (const drawing of document.querySelectorAll('#figure [data-step]'))
    drawing.toggleAttribute('hidden', drawing.getAttribute('data-step') !== step.id);
}

function showFields(now: Picked): void {
  byId('measure', HTMLFieldSetElement).hidden = now.at !== 'measure';
  byId('distance', HTMLFieldSetElement).hidden = now.at !== 'distance';
  byId('stick-size', HTMLElement).hidden = now.kind !== 'stick';
  byId('sheet-size', HTMLElement).hidden = now.kind !== 'sheet';
  // An empty input is not an error yet.
  const empty = emptyFields(now);
  const bad = badFields(now).filter((field) => !empty.includes(field));
  for (const field of document.querySelectorAll<HTMLInputElement | HTMLSelectElement>('[data-field]')) {
    const name = field.dataset['field'] as keyof Fields;
    if (field.value !== now.fields[name]) field.value = now.fields[name];
    field.setAttribute('aria-invalid', String(bad.some((each) => each === name)));
  }
  for (const radio of document.querySelectorAll<HTMLInputElement>('input[name="kind"]'))
    radio.checked = radio.value === now.kind;
  const here = bad.filter((field) => (field === 'distance') === (now.at === 'distance'));
  const asked = now.at === 'measure' || now.at === 'distance' ? here : [];
  say('wrong', asked.flatMap((field) => fieldFault(now.fields, field) ?? []).join(' '));
}

function showList(desk: Desk): void {
  const { now } = desk.session;
  const list = byId('list', HTMLOListElement);
  const steps = stepsFor(now.kind);
  if (list.childElementCount !== steps.length || list.dataset['kind'] !== now.kind) {
    list.dataset['kind'] = now.kind;
    list.replaceChildren(...steps.map(({ id }) => entry(desk, id)));
  }
  steps.forEach(({ id, name }, i) => {
    const button = list.children[i]?.firstElementChild;
    if (!(button instanceof HTMLButtonElement)) return;
    const done = isPoint(id) && now.points[id] !== undefined;
    const state = done ? '\u2713 ' : now.skipped.includes(id) ? '\u2013 ' : '';
    const told = done ? ' (marked)' : now.skipped.includes(id) ? ' (skipped)' : '';
    button.textContent = state + name;
    button.setAttribute('aria-label', name + told);
    if (id === now.at) button.setAttribute('aria-current', 'step');
    else button.removeAttribute('aria-current');
  });
}

function entry(desk: Desk, to: Picked['at']): HTMLElement {
  const button = made('button');
  button.setAttribute('type', 'button');
  button.addEventListener('click', () => {
    desk.do({ do: 'go', to });
  });
  const item = made('li');
  item.append(button);
  return item;
}

function showReadings(desk: Desk): void {
  const { rows, doubts } = readingsOf(desk.session.now, desk.photo);
  const list = byId('readings', HTMLElement);
  list.replaceChildren(...rows.flatMap(({ label, value }) => [made('dt', label), made('dd', value)]));
  const told = byId('doubts', HTMLElement);
  const same =
    [...told.children].map((item) => item.textContent).join('\n') ===
    doubts.map(({ text }) => text).join('\n');
  if (!same) told.replaceChildren(...doubts.map(({ text }) => made('li', text)));
}
