/** Sends back what it is sent: what a message to a worker and its answer cost when nothing is done in between. */
addEventListener('message', ({ data }) => postMessage(data))
