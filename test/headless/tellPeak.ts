/**
 * A module to import into a Node process, which then says on standard error how much memory it held at most, in bytes. The
 * kernel's own figure (maxrss) will not do: a child begins with that of the process that started it.
 */
export const TELL_PEAK = `data:text/javascript,${[
  'let most=0',
  'const look=()=>{most=Math.max(most,process.memoryUsage.rss())}',
  'setInterval(look,5).unref()',
  'process.on("exit",()=>{look();process.stderr.write("peak "+most)})',
].join(';')}`
