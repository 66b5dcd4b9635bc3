// The water desk: what follows is worked out again while one types.
import { following } from './following.js';

/** What was typed, without the fields left blank, so that an address to keep is short. */
function query(form) {
  const all = new FormData(form), kept = new URLSearchParams();
  for (const [name, value] of all) {
    if (all.get(name.replace(/_unit$/, '')).trim() && value !== 'uppstrom') kept.append(name, value);
  }
  // Without any field the answer would be the example.
  if (![...kept.keys()].some((name) => name !== 'boron')) kept.append('ph', '');
  return kept;
}

export function start(main) {
  following(main, main.querySelector('[data-water-desk]'), query);
}
