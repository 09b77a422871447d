export const planRules = {
  'rule.changed': '{reason} Cambiado en este cuaderno: {values}.',
  'rule.changed_value': '{value} {to}',
  'rule.order':
    'El cloro va primero, hasta el mínimo que pide la norma; donde el pH es alto, el pH va antes.',
  'rule.daily_chlorine':
    'Hasta que la célula funcione, el sol y los bañistas se llevan cloro que solo una mano repone.',
  'rule.bleached_test':
    'Un análisis blanqueado da casi nada en una piscina que puede tener treinta.',
  'rule.high_chlorine':
    'Por encima de esto yerran los colorantes de los análisis de pH y alcalinidad.',
  'rule.test_again':
    'Ningún paso se apoya en una medición que el propio error del análisis podría volver del revés.',
  'rule.censored_reading':
    'Con una medición que solo es «más de» o «menos de» no se calcula.',
  'rule.old_bottle': 'El cloro se va de un frasco en unas horas.',
  'rule.circulation': 'Sin caudal, el ácido o el cloro quedan en bolsas.',
  'rule.metals': 'Los metales manchan cuando el cloro los oxida.',
  'rule.drain': 'Los vasos se levantan, las láminas encogen y las bombas marchan en seco.',
  'rule.discharge':
    'El cloro y la sal dañan plantas y arroyos, y la ley dice adónde pueden ir.',
  'rule.acid_cap': 'Demasiado ácido de una vez corroe y baja demasiado el pH.',
  'rule.base_cap': 'Pasado esto, el agua se enturbia.',
  'rule.alkalinity_down':
    'El dióxido de carbono sale del agua de pH bajo, así que primero va el ácido y luego el aire.',
  'rule.acid_place': 'Junto al skimmer o la célula, el ácido hace gas y se come el metal.',
  'rule.acid_and_chlorine': 'El ácido y el cloro dan un gas venenoso.',
  'rule.chlorines_apart': 'Productos de cloro distintos, juntos, arden o estallan.',
  'rule.carbonate_and_calcium': 'Juntos enturbian como carbonato de calcio.',
  'rule.calcium':
    'El calcio por encima de este índice deposita cal, y se calienta al disolverse.',
  'rule.stabilizer': 'El estabilizador se disuelve despacio y no se puede volver a sacar.',
  'rule.salt': 'La sal se mide bien al cabo de un día y no se puede volver a sacar.',
  'rule.fresh_plaster': 'La sal, la célula y las pastillas pican el enlucido que aún fragua.',
  'rule.final_salt':
    'La sal mueve el índice, así que lo demás apunta al agua con toda su sal dentro.',
  'rule.cell_on': 'Fuera de esto las placas se cubren de cal y se gastan.',
  'rule.large_chlorine': 'El cloro alto desprende gas y corroe.',
  'rule.stabilizer_ratio':
    'Con tanto estabilizador el cloro no puede desinfectar; solo ayuda el agua nueva.',
  'rule.out_of_water':
    'El gas y el ácido llegan primero a los bañistas por donde entra el agua.',
  'rule.swim_again': 'Los bañistas vuelven cuando el cloro y el pH están donde los quiere la norma.',
  'rule.undissolved': 'Los granos que quedan en el fondo blanquean, queman o manchan.',
  'rule.three_a_day': 'Más productos en un día llevan a errores.',
  'rule.low_volume':
    'Lo que no se puede sacar se dosifica para la menor agua que puede tener la piscina, en dos partes.',
  'rule.combined_chlorine':
    'Diez veces el cloro combinado pasa de todo límite; el análisis puede estar mal.',
  'rule.phosphate': 'El fosfato por sí solo no da ningún paso.',
  'rule.second_salt_reading':
    'Muchas cosas se leen como poca sal; el agua con sal de más hay que vaciarla.',
  'rule.other_sanitizer': 'Las hojas del cloro no valen para bromo ni biguanida.',
} as const
