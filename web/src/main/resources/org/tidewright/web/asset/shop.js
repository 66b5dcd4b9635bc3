// At the shop: species are found in a list that was fetched once, ticks are added up, and both are there after a reload.
import { keep, list } from './shop-keep.js';
import { find, shown } from './shop-list.js';

/** So many signs are named, the others counted; as in Tally. */
const NAMED = 4;

function joined(clauses) {
  const its = clauses.filter((clause) => clause.startsWith('it '));
  let all = [...its.map((clause, i) => (i ? clause.slice(3) : clause)), ...clauses.filter((clause) => !its.includes(clause))];
  if (all.length > NAMED) all = [...all.slice(0, NAMED - 1), `${all.length - NAMED + 1} more`];
  return all.length === 1 ? all[0] : `${all.slice(0, -1).join(', ')} and ${all.at(-1)}`;
}

/** What the ticked signs add up to, in the words of Tally. */
function tally(seen) {
  const of = (weight) => seen.filter((box) => box.dataset.weight === weight).map((box) => box.dataset.clause);
  if (of('leave').length) return `Leave it: ${joined(of('leave'))}.`;
  return of('ask').length ? `Ask before you buy: ${joined(of('ask'))}.`
    : 'No bad sign ticked: look for each, and ask for what you cannot see.';
}

/** What was ticked and looked up, in this tab alone; a browser may refuse even that. */
function memory(key) {
  return {
    read() { try { return JSON.parse(sessionStorage.getItem(key)) ?? {}; } catch { return {}; } },
    write(state) { try { sessionStorage.setItem(key, JSON.stringify(state)); } catch { /* then a reload begins anew */ } },
  };
}

/** What the address asks for, which goes before what was kept; a page without network knows it from nowhere else. */
function asked() {
  const query = new URLSearchParams(location.search);
  if (!['look', 'kind', 'seen'].some((name) => query.has(name))) return null;
  return { look: query.get('look') ?? '', kind: query.get('kind'), seen: query.getAll('seen') };
}

export function start(main) {
  const form = main.querySelector('[data-shop]'), look = form.elements.look;
  const boxes = [...form.querySelectorAll('[name=seen]')], told = form.querySelector('[data-tally]');
  const found = form.querySelector('[data-found]'), note = form.querySelector('[data-note]'), count = form.querySelector('[data-count]');
  const kept = memory(`tidewright shop ${form.dataset.shop}`);
  let animals = null;

  function remember() {
    kept.write({
      kind: form.elements.kind.value,
      seen: boxes.filter((box) => box.checked).map((box) => box.value),
      look: look.value,
      open: found.querySelector('details[open]')?.dataset.species,
    });
  }

  function add() {
    const sentence = tally(boxes.filter((box) => box.checked && box.dataset.kind === form.elements.kind.value));
    // Said aloud when it changes, and only then.
    if (told.textContent !== sentence) told.textContent = sentence;
  }

  function kindOf(details) {
    const animal = animals?.animals.find((each) => each.species === details.dataset.species);
    if (!animal) return;
    form.elements.kind.value = animal.kind;
    add();
  }

  function search(open) {
    if (!animals) return;
    const result = find(look.value, animals.animals);
    note.textContent = result.note;
    count.textContent = look.value.trim() ? `${result.animals.length} shown. ${result.note}`.trim() : '';
    found.replaceChildren(...result.animals.map((animal) => shown(animal, animals.cautions, form.dataset.shop)));
    const only = found.children.length === 1 ? found.querySelector('details') : null;
    const again = [...found.querySelectorAll('details')].find((details) => details.dataset.species === open) ?? only;
    if (again) { again.open = true; if (again === only) kindOf(again); }
  }

  const state = asked() ?? kept.read();
  if (state.kind) form.elements.kind.value = state.kind;
  for (const box of boxes) box.checked = state.seen?.includes(box.value) ?? box.checked;
  look.value = state.look ?? look.value;
  add();

  form.addEventListener('change', () => { add(); remember(); });
  look.addEventListener('input', () => { search(); remember(); });
  found.addEventListener('click', ({ target }) => {
    const details = target.closest('summary')?.parentElement;
    // The click is told before it opens; what it opens is what is looked at.
    if (details && !details.open) kindOf(details);
  });
  found.addEventListener('toggle', remember, true);
  form.addEventListener('submit', (event) => {
    if (!animals) return;
    event.preventDefault();
    search();
    remember();
    look.blur();
  });
  form.querySelector('[data-next]').addEventListener('click', () => {
    for (const box of boxes) box.checked = false;
    look.value = '';
    search();
    add();
    remember();
    look.focus();
  });

  const fetched = list(form, (fresh) => {
    const first = !animals;
    animals = fresh;
    if (first && look.value) search(state.open ?? found.querySelector('details[open]')?.dataset.species);
  });
  keep(form, fetched);
}
