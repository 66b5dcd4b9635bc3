// The page of corals: a place is tried without leaving it, and drawings keep their text at its size.
import { asking } from './asking.js';
import { fit } from './drawing.js';

/** A coral with its width, or one of the plan's, which has one; and all of a place, or none. */
function isWhole({ elements }) {
  const given = ['x', 'y', 'height'].filter((name) => elements[name].value.trim()).length;
  const { coral, across } = elements;
  return Boolean(coral.value && (across.value.trim() || coral.value.startsWith('own-'))) && given % 3 === 0;
}

export function start(main, replaced) {
  asking(main, replaced, () => '#try', isWhole);
  for (const drawing of main.querySelectorAll('[data-drawing]')) fit(drawing);
}
