import { createContext, useContext } from 'solid-js'
import type { Place } from './resume'

export const PlaceContext = createContext<Place>()

export function useDeskPlace(): Place {
  const place = useContext(PlaceContext)
  if (!place) throw new RangeError('there is no desk page here')
  return place
}
