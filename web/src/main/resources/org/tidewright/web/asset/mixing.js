// The mixing desk: a field left blank is asked for too, since it says that nothing is known there.
import { following } from './following.js';

export function start(main) {
  following(main, main.querySelector('[data-mixing]'), (form) => new URLSearchParams(new FormData(form)));
}
