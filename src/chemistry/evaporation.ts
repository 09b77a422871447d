import type { Failure } from './failure'
import { outside } from './outside'

/**
 * Saturation pressure of water vapour over liquid water, kPa, at 0 to 60 °C. Hyland & Wexler, ASHRAE Transactions 89(2A) (1983)
 * 500-519, as in the ASHRAE Handbook of Fundamentals (from memory).
 */
export function saturationPressure(temperature: number): number | Failure {
  const refused = outside('temperature', temperature, 0, 60)
  if (refused) return refused
  const T = temperature + 273.15
  const exponent =
    -5800.2206 / T +
    1.3914993 -
    0.048640239 * T +
    4.1764768e-5 * T * T -
    1.4452093e-8 * T * T * T +
    6.5459673 * Math.log(T)
  return Math.exp(exponent) / 1_000
}

/** Latent heat of water, kJ/kg, at 0 to 60 °C: 2500.8 - 2.36 T, within 1 kJ/kg of steam tables (from memory). */
export function latentHeat(temperature: number): number {
  return 2_500.8 - 2.36 * temperature
}

/**
 * Water, L/day, that evaporates: (0.089 + 0.0782 v)(pw - pa) / Y in kg/(s m²), times area and day.
 *
 * ASHRAE Handbook, HVAC Applications (from memory), in SI of Smith et al., ASHRAE Transactions 104(1A) (1998) paper 4146:
 * v wind at the surface m/s (0 to 20), pw vapour pressure at the water's temperature and pa that of the air, kPa, Y latent heat. It is
 * made for a pool in use: undisturbed water was measured at 74 % of it, 15 to 20 swimmers on 93 m² at 126 %. Where the air
 * holds more vapour than the water gives off the answer is 0. Water and air 0 to 50 °C, humidity 0 to 1.
 */
export function evaporation(
  area: number,
  temperature: number,
  airTemperature: number,
  humidity: number,
  wind: number,
): number | Failure {
  const refused =
    outside('surface_area', area, 0.01, 100_000) ??
    outside('temperature', temperature, 0, 50) ??
    outside('air_temperature', airTemperature, 0, 50) ??
    outside('relative_humidity', humidity, 0, 1) ??
    outside('wind_speed', wind, 0, 20)
  if (refused) return refused
  const water = saturationPressure(temperature)
  const air = saturationPressure(airTemperature)
  if (typeof water !== 'number') return water
  if (typeof air !== 'number') return air
  const flux = ((0.089 + 0.0782 * wind) * (water - humidity * air)) / latentHeat(temperature)
  return Math.max(0, flux) * area * 86_400
}
