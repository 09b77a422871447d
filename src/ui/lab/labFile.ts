import { createSignal } from 'solid-js'

/** The lab file that is being looked at; it outlives a look at another page. */
const [labFile, setLabFile] = createSignal<File | null>(null)

export { labFile, setLabFile }
