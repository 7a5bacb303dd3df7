import type {Measured} from '../../core/shot/record.js';
import type {Level} from '../../core/tone/level.js';
import type {GrayCard} from '../gray-card-check/reading.js';

/** What the gray card and the measured spot that lie on the bench say. */
export function benchFacts(card: GrayCard | undefined, level: Level | undefined): Measured {
  const known = {
    cardOff: card?.exposureError, spotCode: level?.luminance.code, spotStops: level?.stopsFromGray,
    gainRed: card?.gains?.red, gainBlue: card?.gains?.blue,
  };
  return {
    ...(card && {cardTrusted: card.trusted, ...(card.name && {cardPhoto: card.name.slice(0, 200)})}),
    // Black has no stops, and a card nobody could read no number.
    ...Object.fromEntries(Object.entries(known).filter(([, value]) => Number.isFinite(value))),
  };
}
