import type { Basis } from '../units/basis'

/** What a heading or an analyte's name can stand for. */
export interface Meaning {
  /** several where the name alone cannot tell: then the reader is asked */
  readonly quantities: readonly string[]
  /** what the name says of the basis: `NH4-N` is counted as N */
  readonly basis?: Basis
  /** the name alone does not say what a mass concentration is counted as: then one of these */
  readonly bases?: readonly Basis[]
}

type Entry = readonly [quantities: string, names: string, extra?: Pick<Meaning, 'basis' | 'bases'>]

/**
 * Common laboratory and trade spellings in English, German, French and Spanish, `|` between them; compared by
 * `spelling`, so without accents, marks and capitals. Names that can mean two things list both.
 */
const ENTRIES: readonly Entry[] = [
  [
    'ph',
    'ph|ph value|ph wert|valeur ph|valor ph|ph units|potential of hydrogen|potentiel hydrogene|ph field|ph lab|ph vor ort',
  ],
  [
    'temperature',
    'temperature|temp|t|water temp|water temperature|pool temp|pool temperature|temperature water|temp water|wassertemperatur|temperatur|beckentemperatur|wassertemp|temperature de l eau|temperature eau|temperatura|temperatura del agua|temperatura agua',
  ],
  [
    'bottle_temperature',
    'bottle temperature|bottle temp|temperature bottle|temperature at lab|lab temperature|labortemperatur|flaschentemperatur',
  ],
  ['air_temperature', 'air temp|lufttemperatur|temperature de l air|temperature air|temperatura del aire'],
  [
    'free_chlorine',
    'free chlorine|free cl|free cl2|fcl|fc|fac|free available chlorine|chlorine free|cl2 free|free avail cl|residual free chlorine|free residual chlorine|freies chlor|chlor frei|frei chlor|frei cl|frei cl2|freies cl2|freies cl|chlore libre|chlore libre actif|cl2 libre|cloro libre|cloro libre residual|chlorine free available|chlorine residual free',
  ],
  [
    'total_chlorine',
    'total chlorine|total cl|total cl2|tcl|tc|chlorine total|tac cl|total residual chlorine|gesamtchlor|cl2 gesamt|cl2 ges|cl ges|chlor ges|ges chlor|chlor gesamt|chlore total|cl2 total|cloro total|total avail cl|total available chlorine|chlorine total residual',
  ],
  [
    'combined_chlorine',
    'combined chlorine|combined cl|cc|combined available chlorine|chlorine combined|chloramines|gebundenes chlor|gebundenes cl2|cl2 gebunden|cl2 geb|cl geb|chlor geb|geb chlor|chlor gebunden|chlore combine|chloramine|cloro combinado|cloraminas',
  ],
  [
    'free_chlorine total_chlorine',
    'chlorine|cl2|chlor|chlore|cloro|residual chlorine|chlorine residual|available chlorine|aktivchlor',
  ],
  ['free_chlorine total_chlorine chloride', 'cl'],
  // the French titre, or total available chlorine: the unit tells, or the other headings
  ['total_alkalinity total_chlorine', 'tac'],
  [
    'total_alkalinity',
    'total alkalinity|alkalinity total|alkalinity|alk|t alk|talk|total alk|ta|tot alk|m alkalinity|m alk|alkalinity m|saurekapazitat|saurekap|saurekap ks4 3|saurekapazitat ks4 3|saurekapazitat ks 4 3|saurekapazitat bis ph 4 3|saurekapazitat ph 4 3|ks4 3|ks 4 3|sk 4 3|sbv|saurebindungsvermogen|m wert|alkalinitat|gesamtalkalinitat|karbonatharte|carbonatharte|kh|dkh|titre alcalimetrique complet|alcalinite|alcalinite totale|alcalinidad|alcalinidad total|acid capacity|acid capacity ks4 3|acid neutralizing capacity|anc|alky|alky ph 4 5|alk ph 4 5|alkalinity ph 4 5|alkalinity to ph 4 5|alkalinity ph 4 3|alkalinity to ph 4 3',
  ],
  [
    'calcium_hardness',
    'calcium hardness|ca hardness|ca hard|calc hardness|cal hardness|calcium hard|ch|hardness calcium|hardness ca|cah|calciumharte|kalziumharte|ca harte|durete calcique|titre hydrotimetrique calcique|thca|dureza calcica|dureza de calcio',
  ],
  ['calcium_hardness', 'ca|ca2+|ca 2+|ca++|calcium ion|calcium ca|calcium dissolved', { basis: 'Ca' }],
  ['calcium_hardness', 'calcium|kalzium|calcio', { bases: ['Ca', 'CaCO3'] }],
  [
    'total_hardness',
    'total hardness|hardness total|hardness|th|gh|dgh|general hardness|gesamtharte|wasserharte|harte|titre hydrotimetrique|durete|durete totale|dureza|dureza total|hardness ca mg|hardness ca and mg|tot hardness',
  ],
  [
    'cyanuric_acid',
    'cyanuric acid|cya|cyanuric|cyanurate|stabilizer|stabiliser|chlorine stabilizer|conditioner|cyanursaure|isocyanursaure|stabilisator|chlorstabilisator|acide cyanurique|acide isocyanurique|stabilisant|acido cianurico|acido isocianurico|estabilizante|estabilizador|isocyanuric acid',
  ],
  ['borate', 'borate|borates|boron|bor|b|bore|boro|borat|borates as b|boron b', { basis: 'B' }],
  ['borate', 'boric acid|borsaure|acide borique|acido borico|h3bo3', { basis: 'H3BO3' }],
  ['magnesium', 'magnesium|mg|mg2+|mg++|magnesio'],
  ['magnesium', 'magnesium hardness|mg hardness|hardness magnesium|magnesiumharte', { basis: 'CaCO3' }],
  ['sulfate', 'sulfate|sulphate|so4|so42|sulfat|sulfato|sulfates|sulphates|sulfate so4'],
  ['chloride', 'chloride|chlorides|clminus|chlorid|chlorure|chlorures|cloruro|cloruros|chloride ion|chloride cl'],
  [
    'salt',
    'salt|salt level|nacl|sodium chloride|salz|salzgehalt|kochsalz|natriumchlorid|sel|taux de sel|chlorure de sodium|sal|cloruro de sodio|cloruro sodico|salinity|salinite|salinidad|salinitat',
  ],
  ['cell_salt_reading', 'cell salt|cell salt reading|salt cell|salt at cell|cell reading'],
  [
    'conductivity',
    'conductivity|cond|ec|ec25|k25|lf|lf25|specific conductance|sp cond|spcond|spc|electrical conductivity|specific conductivity|elektrische leitfahigkeit|leitfahigkeit|el leitfahigkeit|elektr leitfahigkeit|conductivite|conductivite electrique|conductividad|conductividad electrica',
  ],
  [
    'tds',
    'tds|total dissolved solids|dissolved solids|dissolved solids total|solids total dissolved|abdampfruckstand|gesamtsalzgehalt|solides dissous totaux|solides totaux dissous|solidos disueltos totales|std|matieres dissoutes',
  ],
  [
    'phosphate',
    'phosphate|phosphates|po4|orthophosphate|ortho phosphate|phosphat|orthophosphat|fosfato|fosfatos|ortofosfato|orthophosphates',
  ],
  ['phosphate', 'po4 p|phosphate p|phosphate as p|orthophosphate p|phosphat p|phosphate phosphorus', { basis: 'P' }],
  ['copper', 'copper|cu|kupfer|cuivre|cobre|copper total|total copper|copper dissolved|dissolved copper'],
  [
    'iron',
    'iron|fe|eisen|fer|hierro|iron total|total iron|fe total|iron dissolved|dissolved iron|eisen gesamt|fer total',
  ],
  ['manganese', 'manganese|mn|mangan|manganeso|manganese total|total manganese|manganese dissolved'],
  [
    'ammonia',
    'ammonia n|nh3 n|nh4 n|ammonium n|ammonia nitrogen|ammoniacal nitrogen|ammonium stickstoff|azote ammoniacal',
    { basis: 'N' },
  ],
  ['ammonia', 'ammonium|nh4|nh4+|amonio', { basis: 'NH4' }],
  ['ammonia', 'nh3', { basis: 'NH3' }],
  ['ammonia', 'ammonia|ammoniak|ammoniac|ammoniaque|amoniaco', { bases: ['N', 'NH3', 'NH4'] }],
  ['bromine', 'bromine|total bromine|br2|br|brom|brome|bromo'],
  [
    'orp',
    'orp|redox|redox potential|redoxpotential|redoxspannung|oxidation reduction potential|potentiel redox|potencial redox|rh redox',
  ],
  ['turbidity', 'turbidity|turb|trubung|turbidite|turbidez'],
  ['sample_age', 'sample age|age of sample'],
]

/**
 * Names that look like one of ours and are another thing. They are kept as notes, and the code says why: to read one of
 * them as its neighbour would be a wrong dose.
 */
const LOOKALIKES: Readonly<Record<string, string>> = {
  not_total_alkalinity:
    'carbonate alkalinity|alkalinity carbonate|bicarbonate alkalinity|alkalinity bicarbonate|hydroxide alkalinity|alkalinity hydroxide|phenolphthalein alkalinity|p alkalinity|p alk|alkalinity p|alkalinity phenolphthalein|titre alcalimetrique|bicarbonate|bicarbonates|hydrogencarbonat|hco3|carbonate|carbonates|co3|p wert|adjusted alkalinity|corrected alkalinity',
  base_capacity: 'basekapazitat|basekapazitat kb8 2|kb8 2|kb 8 2|basenkapazitat',
  not_total_hardness:
    'carbonate hardness|hardness carbonate|non carbonate hardness|hardness non carbonate|nichtkarbonatharte|permanent hardness|temporary hardness',
}

export const MEANINGS: ReadonlyMap<string, Meaning> = new Map(
  ENTRIES.flatMap(([quantities, names, extra]) =>
    names.split('|').map((name) => [name, { quantities: quantities.split(' '), ...extra }]),
  ),
)

export const LOOKALIKE: ReadonlyMap<string, string> = new Map(
  Object.entries(LOOKALIKES).flatMap(([why, names]) => names.split('|').map((name) => [name, why])),
)

/** Words around a name that change nothing of what is measured. */
export const BESIDE_THE_POINT: ReadonlySet<string> = new Set(
  'pool water sample value result results lab field test measured reading level conc concentration average avg dpd photometer photometric titration of the in wert gehalt konzentration wasser beckenwasser gemessen im eau bassin piscine mesure de du la le agua piscina del el medido concentracion concentration ion as icp ms oes aas ise probe strip strips meter electrode kit online grab spot vor ort'.split(
    ' ',
  ),
)
