// Finds animals by a part of a name and shows them, as the server does without script (NameSearch, shop.jte).
const SHOWN = 8, REASONS = 5, SHORTEST = 3;
const WORDS = { yes: 'Yes', not_yet: 'Not yet', no: 'No' };
const MARKS = { yes: 'holds', mind: 'holds', not_yet: 'close', no: 'fails' };
const LABELS = { mind: 'mind this', not_yet: 'not yet', no: 'no' };
const SVG = 'http://www.w3.org/2000/svg';

/** Letters and digits in lower case without accents, words apart by one space. */
function plain(text) {
  return text.normalize('NFD').replace(/\p{M}/gu, '').toLowerCase().replace(/[^\p{L}\p{Nd}]+/gu, ' ').trim();
}

const names = new WeakMap();

function namesOf(animal) {
  if (!names.has(animal)) names.set(animal, [animal.common_name, animal.species, ...animal.other_names].map(plain));
  return names.get(animal);
}

/** 0 the name itself, 1 begins with it, 2 words begin with the words, 3 somewhere within, 4 not at all. */
function rank(by, animal) {
  const all = namesOf(animal), together = ` ${all.join(' ')}`, words = by.split(' ');
  if (all.includes(by)) return 0;
  if (all.some((name) => name.startsWith(by))) return 1;
  if (words.every((word) => together.includes(` ${word}`))) return 2;
  return words.every((word) => together.includes(word)) ? 3 : 4;
}

function matches(by, animals) {
  if (!by) return [];
  const ranked = animals.map((animal) => ({ animal, rank: rank(by, animal) })).filter((each) => each.rank < 4);
  const name = (each) => `${namesOf(each.animal)[0]}\n${namesOf(each.animal)[1]}`;
  ranked.sort((a, b) => a.rank - b.rank || (name(a) < name(b) ? -1 : 1));
  return ranked.map((each) => each.animal);
}

/** The likeliest few, and what is to be said of them; where nothing has all that was typed, those with its beginning. */
export function find(typed, animals) {
  const asked = plain(typed);
  let by = asked, found = matches(by, animals);
  while (!found.length && by.length > SHORTEST) {
    by = by.slice(0, -1).trim();
    found = matches(by, animals);
  }
  const shownNow = found.slice(0, SHOWN), left = found.length - shownNow.length;
  const more = left ? `${left} more: type more of the name.` : '';
  let note = more;
  if (asked && !found.length) note = `No species that is known has “${typed.trim()}” in a name.`;
  else if (by !== asked) note = `No name has “${typed.trim()}” in it; these have “${by}”. ${more}`.trim();
  return { animals: shownNow, note };
}

function element(name, attributes, ...content) {
  const made = document.createElement(name);
  for (const [key, value] of Object.entries(attributes)) made.setAttribute(key, value);
  made.append(...content);
  return made;
}

function disc(mark, attributes) {
  const svg = document.createElementNS(SVG, 'svg'), use = document.createElementNS(SVG, 'use');
  for (const [key, value] of Object.entries({ class: 'disc', ...attributes })) svg.setAttribute(key, value);
  use.setAttribute('href', `#${mark}`);
  svg.append(use);
  return svg;
}

function becomes(animal) {
  const changes = animal.becomes_yes.map((change) => element('li', {}, change));
  return changes.length
    ? [element('div', { class: 'becomes' }, element('p', {}, 'It becomes ', element('b', {}, 'yes'), ':'), element('ul', {}, ...changes))]
    : [];
}

function reasons(animal) {
  // The first is the lead.
  const rest = animal.reasons.slice(1, REASONS + 1).map(({ says, sentence }) => element('li', {},
    disc(MARKS[says], { role: 'img', 'aria-label': LABELS[says] }), element('p', {}, sentence)));
  return rest.length ? [element('ul', { class: 'reasons', 'aria-label': 'Further reasons' }, ...rest)] : [];
}

function whole(animal) {
  const left = animal.reasons.length - 1 - REASONS;
  return left > 0 ? `The whole verdict: ${left} ${left === 1 ? 'reason' : 'reasons'} more, and sources`
    : 'The whole verdict, with its sources';
}

/** A species with its verdict, folded. */
export function shown(animal, cautions, shop) {
  const life = `${shop.replace(/shop$/, 'life')}?${new URLSearchParams({ consider: animal.species })}`;
  return element('li', {}, element('details', { 'data-species': animal.species },
    element('summary', {},
      element('span', {}, element('b', {}, animal.common_name), ' ', element('em', { class: 'latin' }, animal.species)),
      element('span', { class: 'word' }, disc(MARKS[animal.verdict], { 'aria-hidden': 'true' }), WORDS[animal.verdict])),
    element('div', { class: 'shop-animal' },
      element('p', { class: 'lead' }, animal.lead),
      element('p', { class: 'note' }, animal.size),
      ...becomes(animal),
      ...reasons(animal),
      ...animal.cautions.map((key) => element('p', { class: 'caution' }, element('b', {}, 'Caution.'), ' ', cautions[key])),
      element('p', { class: 'whole' }, element('a', { href: life }, whole(animal))))));
}
