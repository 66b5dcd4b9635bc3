// The build page: which water the drawing shows.
import { account, fit, json, keys, show, stateAt } from './drawing.js';

export function start(main) {
  const drawing = main.querySelector('[data-drawing]');
  fit(drawing);
  const water = json(main, '[data-water]'), states = json(main, '[data-states-json]');
  const form = main.querySelector('[data-states]');
  if (!water || !form) return;
  const aside = main.querySelector('.account');
  const draw = () => {
    const value = form.querySelector('[name=show]:checked').value;
    const index = states.findIndex((state) => state.value === value);
    const state = stateAt(water, index);
    show(drawing, water, state);
    account(aside, state);
    keys(main.querySelector('[data-keys]'), water, state);
    const told = states[index];
    if (told.room) {
      aside.querySelector('[data-room-head]').textContent = told.head;
      aside.querySelector('[data-room]').innerHTML = told.room;
      aside.querySelector('[data-room-note]').textContent = told.note;
    }
    const address = new URL(location.href);
    if (index) address.searchParams.set('show', value); else address.searchParams.delete('show');
    history.replaceState(null, '', address);
  };
  form.addEventListener('change', draw);
  form.addEventListener('submit', (event) => event.preventDefault());
}
