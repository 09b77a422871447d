/** What a column is for when it holds no quantity. */
export type Role =
  | 'sample'
  | 'place'
  | 'date'
  | 'time'
  | 'note'
  /** whether the laboratory stands by a row, and what kind of sample it is */
  | 'status'
  | 'kind'
  // of a file with one result a row
  | 'analyte'
  | 'fraction'
  | 'result'
  | 'result_text'
  | 'qualifier'
  | 'detection'
  | 'unit'
  | 'limit'
  | 'limit_unit'

/**
 * Headings by role, compared by `spelling`. Among them the columns of the US Water Quality Portal (WQX 2.2 and 3.0; where R
 * wrote the file its `/` is `.`, the same spelling), of England's water-quality archive and of France's drinking-water
 * results.
 */
const HEADINGS: Readonly<Record<Exclude<Role, 'note'>, string>> = {
  sample:
    'sample|sample id|sample no|sample nr|sample number|sample name|sample code|sampleid|id|lab id|lab no|lab number|lab sample id|reference|ref|probe|probe nr|proben nr|probennr|probenr|probennummer|probenbezeichnung|probenname|probe id|labornummer|labor nr|echantillon|numero d echantillon|n echantillon|no echantillon|muestra|id muestra|n muestra|numero de muestra|codigo de muestra|sample nr|sample num|activityidentifier|activity activityidentifier|code prelevement|sample sample|bottle|flasche|customer|client|kunde',
  place:
    'place|site no|station nm|location|site|station|pool|pool name|sampling point|sample point|sample location|site name|site id|facility|basin|ort|messstelle|entnahmestelle|probenahmestelle|becken|lieu|point de prelevement|bassin|piscine|lugar|punto de muestreo|piscina|monitoringlocationidentifier|location identifier|monitoringlocationname|location name|sample samplingpoint|sample samplingpoint notation|sample samplingpoint label|nom installation|nom uge|nom commune',
  date: 'date|sample dt|sample date|sampled|sampled on|date sampled|sampling date|collected|collected on|collection date|date collected|date time|datetime|date and time|timestamp|time stamp|time utc|utc time|datetime utc|timestamp utc|date time utc|local time|sample time and date|datum|entnahme|entnahmedatum|probenahme|probenahmedatum|datum der probenahme|datum uhrzeit|date de prelevement|date prelevement|date du prelevement|prelevement|date heure|fecha|fecha de muestreo|fecha muestreo|fecha de toma|fecha y hora|activitystartdate|activity startdate|sample sampledatetime|tested|test date|date tested',
  time: 'time|sample tm|sample time|sampling time|test time|time tested|time sampled|collection time|time collected|zeit|uhrzeit|entnahmezeit|heure|hora|activitystarttime time|activity starttime',
  status:
    'status|result status|resultstatusidentifier|result measurestatusidentifier|result status identifier|validation|validation status|data validation|validity|review status|qc status|gultigkeit|validierung|statut|validite|estado|validacion',
  kind: 'activitytypecode|activity typecode|activity type|sample type|sampletype|sample type code|qc type|qc code|probenart|probentyp|type d echantillon|tipo de muestra',
  analyte:
    'analyte|analyte name|analyse|analysis|untersuchung|kenngrosse|test|test item|item|measurement|determination|parm nm|parameter nm|parameter|parameter name|parameter code|determinand|determinand label|test name|characteristic|characteristicname|result characteristic|constituent|compound|messgrosse|merkmal|parametre|nom parametre|libelle parametre|parametro|analito|determinacion',
  fraction: 'fraction|sample fraction|result fraction|resultsamplefractiontext|result samplefraction|fraktion',
  result:
    'result|results|value|result value|measured value|concentration|messwert|ergebnis|wert|resultat|valeur|resultat numerique|resultado|valor|resultmeasurevalue|result measure|final result|reported result|result va|value measured',
  result_text: 'resultat alphanumerique|result text|reported value|text result',
  qualifier:
    'qualifier|qual|flag|flags|q|lab flag|remark code|remark cd|data qualifier|result qualifier|resultqualifier notation|qualifikator|vorzeichen|prefix|sign|operator|signe|qualificatif|calificador|signo|measurequalifiercode|result measurequalifiercode',
  detection:
    'resultdetectionconditiontext|result resultdetectioncondition|detection condition|detect|detected|non detect|nondetect|non detected|not detected|nd',
  unit: 'unit|units|unit of measure|uom|result unit|einheit|einheiten|unite|unites|libelle unite|unidad|unidades|resultmeasure measureunitcode|result measureunit|determinand unit label|unit label',
  limit:
    'rl|mdl|loq|lod|pql|mrl|dl|ql|rdl|reporting limit|detection limit|quantitation limit|limit of detection|limit of quantification|bg|ng|bestimmungsgrenze|nachweisgrenze|lq|ld|limite de quantification|limite de detection|limite de cuantificacion|detectionquantitationlimitmeasure measurevalue|detectionlimit measurea',
  limit_unit: 'limit unit|detectionquantitationlimitmeasure measureunitcode|detectionlimit measureunita',
}

/** Roles that mean something only where each row is one result. */
export const OF_RESULTS: ReadonlySet<Role | 'quantity'> = new Set<Role>([
  'analyte',
  'fraction',
  'result',
  'result_text',
  'qualifier',
  'detection',
  'unit',
  'limit',
  'limit_unit',
])

export const ROLES: ReadonlyMap<string, Role> = new Map(
  Object.entries(HEADINGS).flatMap(([role, names]) => names.split('|').map((name) => [name, role as Role])),
)
