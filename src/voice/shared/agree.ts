/** Brings two opinions on one utterance together: the engine's, and that of the phrases scored whole. Pure. */

export interface First {
  /** Empty when nothing was found. */
  readonly text: string;
  /** 0 to 1; below one half it does not count. */
  readonly confidence: number;
}

export interface Second {
  readonly phrase: string;
  /** False for a word of everyday talk. */
  readonly isOurs: boolean;
  /** Against free phones, natural logarithm a frame. */
  readonly fit: number;
  /** Over the next phrase, natural logarithm. */
  readonly lead: number;
  /** The next phrase. */
  readonly next: string;
  readonly frames: number;
}

/** What a text does when it is taken: a number is read back, a question changes nothing, "hold" makes the job wait. */
export type Weight = 'number' | 'harmless' | 'pausing' | 'phrase';

/** How the room and the words are. */
export interface Circumstances {
  weightOf(text: string): Weight;
  /** How far the loud part stands over the room, natural logarithm of power, mean of the bands. */
  readonly overRoom: number;
}

interface Limits {
  readonly fit: number;
  /** Lead a frame. */
  readonly lead: number;
}

/**
 * The second opinion carries a phrase alone from here on. Short questions are what other talk is taken for
 * first ("why"), so they must fit better; words that only make the job wait may fit worse. Tuned on the voices
 * slt and m3 in made noise.
 */
const ALONE: Readonly<Record<Weight, Limits>> = {
  phrase: { fit: -1.8, lead: 0.75 },
  number: { fit: -1.8, lead: 0.75 },
  pausing: { fit: -2.2, lead: 0.35 },
  harmless: { fit: -1.1, lead: 0.9 },
};
/** A blow of a hammer was taken for "why", 16 to 18 frames of it: so short a question is not carried alone. */
const SHORTEST_QUESTION = 20;
/** A lead that is more than enough makes up for some fit. */
const LEAD_FOR_FIT = 0.2;
const MOST_LEAD = 1.5;
/** In noise everything fits worse, other talk too: from the one to the other the limit goes down by so much. */
const QUIET = 6;
const NOISY = 4;
const WORSE_IN_NOISE = 0.3;
/**
 * With the engine of the same opinion less is enough: what one of the two lacks the other may have more of. In broadband
 * noise at 15 dB the five voices of tuning had 52 of 65 commands for 43 with a limit for each by itself, and 20 minutes of
 * noise and talk gave nothing.
 */
const TOGETHER = { sum: -0.4, lead: 0.15, confidence: 0.1 };
const SURENESS = 2;
/** From here on the second opinion is worth contradicting for. */
const OTHERWISE = 0.3;
/** A phrase that fits so much worse than its limit was not said, whatever the engine found: less if it hardly leads. */
const HOPELESS = { fit: 0.7, lead: 0.6, clear: 2.2 };
const PATIENCE = 1.5;
/** Where the engine is so sure, the second opinion may have its phrase next behind another that leads by less than this. */
const NEXT = { confidence: 0.7, lead: 0.8 };
const REFUSED = 0.4;

/** What both together say; the confidence of what they differ on is below one half. */
export function agree(first: First, second: Second | null, where: Circumstances): First {
  // Where no phrase of ours has room in the sound, none was said.
  if (!second) return mayBeRefused(first, where) ? refused(first) : first;
  const isSure = first.confidence >= 0.5;
  const lead = second.lead / Math.max(1, second.frames);
  const weight = where.weightOf(second.phrase);
  const enough = ALONE[weight].lead;
  const spare = LEAD_FOR_FIT * Math.max(0, Math.min(MOST_LEAD, lead) - enough);
  const over = second.fit + spare - limitOf(second.phrase, where);
  const isLong = weight !== 'harmless' || second.frames >= SHORTEST_QUESTION;
  const isAlone = second.isOurs && isLong && over > 0 && lead > enough;
  if (second.isOurs && first.text === second.phrase) {
    if (isSure) return isHopeless(over + patience(first, weight), lead) ? refused(first) : first;
    return isAlone || (isLong && isTogether(first, over, lead))
      ? { ...first, confidence: 0.65 }
      : first;
  }
  if (isAlone) return isSure ? refused(first) : { text: second.phrase, confidence: 0.6 };
  const isNext = second.next === first.text && first.confidence >= NEXT.confidence;
  const otherwise = isNext ? NEXT.lead : OTHERWISE;
  return isSure && mayBeRefused(first, where) && lead > otherwise ? refused(first) : first;
}

/** A question that the engine is sure of may fit worse: it changes nothing. */
function patience({ confidence }: First, weight: Weight): number {
  return weight === 'harmless' ? PATIENCE * (confidence - 0.5) : 0;
}

function isHopeless(over: number, lead: number): boolean {
  return over < -(lead > HOPELESS.lead ? HOPELESS.clear : HOPELESS.fit);
}

/** A number is read back, and a word that makes the job wait is better heard once too often. */
function mayBeRefused({ text }: First, { weightOf }: Circumstances): boolean {
  return text !== '' && weightOf(text) !== 'number' && weightOf(text) !== 'pausing';
}

function limitOf(phrase: string, { weightOf, overRoom }: Circumstances): number {
  const noise = Math.max(0, Math.min(1, (QUIET - overRoom) / (QUIET - NOISY)));
  return ALONE[weightOf(phrase)].fit - WORSE_IN_NOISE * noise;
}

function isTogether({ confidence }: First, over: number, lead: number): boolean {
  const sum = over + lead + SURENESS * (confidence - 0.5);
  return sum > TOGETHER.sum && lead > TOGETHER.lead && confidence > TOGETHER.confidence;
}

function refused({ text, confidence }: First): First {
  return { text, confidence: Math.min(confidence, REFUSED) };
}
