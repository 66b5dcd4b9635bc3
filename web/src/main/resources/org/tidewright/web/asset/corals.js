// The page of corals: a place is tried without leaving it, and drawings keep their text at its size.
import { asking } from './asking.js';
import { fit } from './drawing.js';

export function start(main, replaced) {
  asking(main, replaced, () => '#try');
  for (const drawing of main.querySelectorAll('[data-drawing]')) fit(drawing);
}
