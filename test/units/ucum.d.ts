/** The part that the tests use of the general UCUM library, which ships no types. */
declare module '@lhncbc/ucum-lhc' {
  interface Conversion {
    readonly status: 'succeeded' | 'failed' | 'error'
    readonly toVal: number | null
    readonly msg: readonly string[]
  }
  interface Utils {
    convertUnitTo(
      from: string,
      value: number,
      to: string,
      options?: { readonly molecularWeight?: number; readonly charge?: number },
    ): Conversion
  }
  const library: { readonly UcumLhcUtils: { getInstance(): Utils } }
  export default library
}
