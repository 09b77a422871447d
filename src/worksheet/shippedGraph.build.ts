import { shippedCatalog } from './shippedCatalog'

const { quantities, solves } = shippedCatalog()

/**
 * What reads what in the shipped worksheets. The build puts the finished data in this module's place, so that the page
 * needs neither parser nor functions for it.
 */
export default {
  quantities: [...quantities.values()].map(({ name, worksheet, reads, readBy, calls }) => ({
    name,
    worksheet,
    reads,
    readBy,
    calls,
  })),
  solves: [...solves.values()].map(({ id, function: name, inputs, outputs }) => ({
    id,
    function: name,
    inputs: inputs.filter((input) => input !== undefined),
    outputs,
  })),
}
