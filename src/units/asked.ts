/** A written form that means different amounts to different readers. */
export interface Asked {
  readonly written: readonly string[]
  /** unit codes it may stand for */
  readonly choices: readonly string[]
  /** what it is in a US notebook; left out where it is asked there too */
  readonly us?: string
}

const QUESTIONS: readonly Asked[] = [
  { written: ['gal', 'gals', 'gallon', 'gallons'], choices: ['US gal', 'imp gal'], us: 'US gal' },
  { written: ['qt', 'qts', 'quart', 'quarts'], choices: ['US qt', 'imp qt'], us: 'US qt' },
  { written: ['pt', 'pts', 'pint', 'pints'], choices: ['US pt', 'imp pt'], us: 'US pt' },
  {
    written: ['fl oz', 'fl. oz', 'floz', 'fluid ounce', 'fluid ounces'],
    choices: ['US fl oz', 'imp fl oz'],
    us: 'US fl oz',
  },
  { written: ['gpm', 'gal/min', 'gallons/minute'], choices: ['US gal/min', 'imp gal/min'], us: 'US gal/min' },
  { written: ['gph', 'gal/h', 'gal/hr', 'gallons/hour'], choices: ['US gal/h', 'imp gal/h'], us: 'US gal/h' },
  { written: ['gpd', 'gal/day', 'gal/d', 'gallons/day'], choices: ['US gal/day', 'imp gal/day'], us: 'US gal/day' },
  { written: ['oz', 'ozs', 'ounce', 'ounces'], choices: ['US fl oz', 'imp fl oz', 'oz wt'] },
  { written: ['ppt'], choices: ['g/L', 'ng/L'] },
  { written: ['grain', 'grains', 'gr'], choices: ['gpg', '°e'] },
  { written: ['ton', 'tons'], choices: ['t', 'US ton', 'imp ton'] },
]

/** By folded small letters: asked, never guessed. */
export const ASKED: ReadonlyMap<string, Asked> = new Map(
  QUESTIONS.flatMap((question) => question.written.map((text) => [text, question] as const)),
)
